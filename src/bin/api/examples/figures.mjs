// An example in Node: `node figures.mjs house.json` prints what the run of a plan costs, and what would
// be better.

import { readFile } from 'node:fs/promises';
import { figures, reroute } from '../elbowroom.js';

try {
  const text = await readFile(process.argv[2], 'utf8');
  const { totals, elements } = figures(text);
  console.log(`Airflow ${(totals.airflow_m3_per_s * 1000).toFixed(1)} L/s, back pressure ${totals.back_pressure_pa.toFixed(1)} Pa`);
  const costliest = elements.find(({ air }) => air.rank === 1);
  console.log(`Costliest: ${costliest.element.kind}, ${(costliest.air.share * 100).toFixed(0)} % of the loss`);
  const [best] = reroute(text, { most_suggestions: 1 }).suggestions;
  if (best?.gain) console.log(`Better by ${(best.gain.airflow_m3_per_s * 1000).toFixed(1)} L/s: ${best.changes.map(({ kind }) => kind).join(', ')}`);
} catch (problem) {
  console.error(problem.path ? `${problem.message} (${problem.path})` : problem.message);
  process.exitCode = 1;
}
