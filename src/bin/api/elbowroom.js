// Elbowroom's figures for other programs, in Node and in a browser. `elbowroom.d.ts` beside this file
// has the types, and DEVELOPERS.md an example.
//
// Each function takes a plan as an object or as the text of its file and answers at once; what cannot
// be ends in an Error with the `path` of the field at fault. Nothing is fetched but the program itself,
// which stands beside this file, and nothing is kept.

import { answer, default as start, example as exampleFile, initSync, view as viewOf } from './program.js';

const program = new URL('./program_bg.wasm', import.meta.url);
if (program.protocol === 'file:') {
  // Node's fetch reads no files.
  const { readFile } = await import('node:fs/promises');
  initSync({ module: await readFile(program) });
} else {
  await start({ module_or_path: program });
}

/** Every figure of every element, in SI; with `{ bands: true }` the bands of the totals too. */
export const figures = (plan, options) => answer('figures', plan, options);

/** What the plan's rule set says: every rule with measured value, limit and margin. */
export const check = (plan, options) => answer('check', plan, options);

/** Other routes and upgrades, each worked out in full. */
export const reroute = (plan, options) => answer('reroute', plan, options);

/** What the readings of a visit mean, and what to test next. */
export const diagnose = (plan, options) => answer('diagnose', plan, options);

/** The example that the page opens with, as a plan. */
export const example = () => JSON.parse(exampleFile());

/** The handover sheet as one HTML file, in which whatever was typed is inert. */
export const sheet = (plan, options) => answer('sheet', plan, options);

/** Drawing and totals in words, for a page that shows a plan. */
export const view = (plan, options) => viewOf(plan, options);
