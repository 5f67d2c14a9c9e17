// How many plans a second the terminal tool works out: 10,000 invented houses (`many_plans.mjs`) in a
// temporary folder, heat included, without bands. Processor time is what a busy machine does not
// lengthen; each part's is its share of one thread's time, which the tool takes itself. Its memory at 1,000 plans and at
// 10,000 shows whether it holds on to any.
//
//   node tests/bench/terminal.mjs [repeats]

import { execFileSync, spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { composed } from './many_plans.mjs';
import { percentile } from './percentile.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const results = path.join(root, 'tests/results/bench');
const program = path.join(root, process.env.CARGO_TARGET_DIR ?? 'target', 'release', 'elbowroom');
const repeats = Number(process.argv[2] ?? 9);
const FEW = 1_000;
const MANY = 10_000;
const CORES = 2;
const BAR = 10_000;
const PARTS = ['reading', 'parsing', 'working', 'printing'];

execFileSync('cargo', ['build', '--locked', '--release', '--quiet', '--bin', 'elbowroom'], { cwd: root, stdio: 'inherit' });
const folder = mkdtempSync(path.join(os.tmpdir(), 'elbowroom-bench-'));
try {
  const [few, many] = [FEW, MANY].map((count) => made(path.join(folder, String(count)), count));
  const measured = {};
  for (const format of ['lines', 'csv']) {
    await timed(many, format);
    const runs = [];
    for (let repeat = 0; repeat < repeats; repeat += 1) runs.push(await timed(many, format));
    measured[format] = summed(runs);
  }
  // One after the other, so that no thread waits for another: what each part costs.
  const alone = [];
  for (let repeat = 0; repeat < repeats; repeat += 1) alone.push(shared(await timed(many, 'lines', 1)));
  measured.parts = summed(alone);
  measured.peak_kib = { [FEW]: (await timed(few, 'lines')).peak_memory_kib, [MANY]: measured.lines.peak_memory_kib };
  mkdirSync(results, { recursive: true });
  writeFileSync(path.join(results, 'terminal.json'), `${JSON.stringify({ cores: CORES, bar: BAR, ...measured }, null, 2)}\n`);
  print(measured);
} finally {
  rmSync(folder, { recursive: true });
}

function made(inside, count) {
  mkdirSync(inside);
  for (let seed = 0; seed < count; seed += 1) {
    writeFileSync(path.join(inside, `${String(seed).padStart(5, '0')}.json`), JSON.stringify(composed(seed), null, 2));
  }
  return inside;
}

/** One run over a folder, whose output is read and thrown away. */
function timed(inside, format, threads = CORES) {
  return new Promise((resolve, reject) => {
    const tool = spawn(program, ['figures', '--times', '--threads', threads, '--format', format, inside], { stdio: ['ignore', 'ignore', 'pipe'] });
    let told = '';
    tool.stderr.on('data', (chunk) => { told += chunk; });
    tool.on('error', reject);
    tool.on('close', (status) => {
      if (status === 0) resolve(JSON.parse(told));
      else reject(new Error(`${status}: ${told}`));
    });
  });
}

/** The parts in processor time, each by its share of the thread's. */
function shared(run) {
  const all = PARTS.reduce((sum, part) => sum + run[`${part}_s`], 0);
  return { ...run, ...Object.fromEntries(PARTS.map((part) => [`${part}_s`, (run.processor_s * run[`${part}_s`]) / all])) };
}

/** The median of each figure. */
function summed(runs) {
  const names = Object.keys(runs[0]);
  return Object.fromEntries(names.map((name) => [name, percentile(runs.map((run) => run[name]), 0.5)]));
}

function print({ lines, csv, parts, peak_kib: peak }) {
  const whole = (number) => Math.round(number).toLocaleString('en-US');
  const row = (name, { plans, whole_s: seconds, processor_s: processor }) => {
    console.log(`${name}: ${whole(plans / seconds)} plans a second on ${CORES} threads, ${whole(plans / processor)} a second of one processor (bar ${whole(BAR)})`);
  };
  row('JSON lines', lines);
  row('comma-separated values', csv);
  for (const part of PARTS) {
    const each = parts[`${part}_s`] / parts.plans;
    console.log(`- ${part}: ${(each * 1e6).toFixed(1)} µs a plan, ${whole(1 / each)} a second of one processor`);
  }
  console.log(`peak memory: ${whole(peak[FEW])} KiB for ${whole(FEW)} plans, ${whole(peak[MANY])} KiB for ${whole(MANY)}`);
}
