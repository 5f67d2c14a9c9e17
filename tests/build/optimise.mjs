// Optimises a program for the browser in its place.
//
// Optimised files are kept by the hash of what made them, because the optimiser takes
// longer than everything else in a build that changed nothing.

import { createHash } from 'node:crypto';
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';

// Named one by one: `--all-features` would emit WebAssembly that browsers refuse.
const WASM_FEATURES = [
  '--enable-bulk-memory',
  '--enable-nontrapping-float-to-int',
  '--enable-sign-ext',
  '--enable-mutable-globals',
  '--enable-reference-types',
  '--enable-multivalue',
];
const WASM_LEVEL = '-O3';

// What the page's library exports for the streams of a server that this page has none of.
const NEVER_CALLED = /intounderlying/;

/** Optimises `file`, and keeps the outcome in a folder under `target`. */
export function optimise(file, target) {
  const require = createRequire(import.meta.url);
  const binaryen = path.dirname(require.resolve('binaryen/package.json'));
  const { version } = require('binaryen/package.json');
  const key = createHash('sha256')
    .update(JSON.stringify([version, WASM_LEVEL, WASM_FEATURES, String(NEVER_CALLED)]))
    .update(readFileSync(file))
    .digest('hex');
  const kept = path.join(target, 'wasm-opt', `${path.basename(file)}-${key}`);
  if (!existsSync(kept)) {
    mkdirSync(path.dirname(kept), { recursive: true });
    const unfinished = `${kept}.unfinished`;
    const run = (tool, ...options) => execFileSync(
      process.execPath,
      [path.join(binaryen, 'bin', tool), ...options, ...WASM_FEATURES, '-o', unfinished],
      { stdio: ['ignore', 'ignore', 'inherit'] },
    );
    writeFileSync(`${kept}.graph`, JSON.stringify(callers(file)));
    run('wasm-metadce', file, '--graph-file', `${kept}.graph`);
    rmSync(`${kept}.graph`);
    run('wasm-opt', unfinished, WASM_LEVEL);
    renameSync(unfinished, kept);
  }
  writeFileSync(file, readFileSync(kept));
}

// What reaches the program from outside: all that it exports but what is never called.
function callers(file) {
  const exported = WebAssembly.Module.exports(new WebAssembly.Module(readFileSync(file))).map(({ name }) => name);
  const called = exported.filter((name) => !NEVER_CALLED.test(name));
  return [
    { name: 'outside', root: true, reaches: called.map((name) => `of ${name}`) },
    ...called.map((name) => ({ name: `of ${name}`, export: name })),
  ];
}
