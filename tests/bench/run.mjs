// Runs every bench, one after the other, and prints one table: `make bench`.
//
// The page must be built; the Makefile sees to that.

import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const results = path.join(root, 'tests/results/bench');
const cache = process.env.XDG_CACHE_HOME || path.join(process.env.HOME, '.cache');
const python = path.join(cache, 'elbowroom', 'venv', 'bin', 'python');
const plan = 'tests/bench/twenty.json';
const FRAME_MS = 1000 / 60;

// What an earlier run left behind must not be taken for a result of this one.
rmSync(results, { recursive: true, force: true });
mkdirSync(results, { recursive: true });

// A build would be taken for another job.
run('cargo', ['bench', '--locked', '--no-run']);
const others = [await busyShare()];
run('cargo', ['bench', '--locked', '--bench', 'evaluation']);
const figures = path.join(results, 'figures.json');
writeFileSync(figures, output('cargo', ['run', '--locked', '--release', '--quiet', '--', 'figures', plan]));
const peer = JSON.parse(output(python, ['tests/bench/peer.py', plan, figures]));
others.push(await busyShare());
const guard = run('node', ['tests/bench/instructions.mjs'], { mayFail: true });
others.push(await busyShare());
run('node', ['tests/bench/browser.mjs']);
others.push(await busyShare());
run('node', ['tests/bench/search.mjs']);
others.push(await busyShare());
run('node', ['tests/bench/terminal.mjs']);
others.push(await busyShare());

print(read('evaluation.json'), read('instructions.json'), read('browser.json'), read('search.json'), read('terminal.json'));
if (!guard) process.exitCode = 1;

function print({ twenty, growth }, instructions, browser, search, terminal) {
  const timing = (name) => twenty.find((each) => each.name === name);
  const micro = (name) => [`${(timing(name).median_ns / 1e3).toFixed(2)} µs`, `${(timing(name).p95_ns / 1e3).toFixed(2)} µs`];
  const exponent = (name) => `${growth[name].exponent.toFixed(2)} (from 1,000 on ${growth[name].last_step.toFixed(2)})`;
  const full = timing('full evaluation');
  const ratio = (1000 * peer.median_us) / full.median_ns;
  const milli = ({ median, p95 }) => [`${median.toFixed(1)} ms`, `${p95.toFixed(1)} ms`];
  const nativeBand = { median: timing('band of 512').median_ns / 1e6, p95: timing('band of 512').p95_ns / 1e6 };

  const rows = [
    ['full evaluation, 20 elements, native', ...micro('full evaluation'), '3 µs'],
    ['- operating point alone', ...micro('operating point'), ''],
    ['- ledger alone', ...micro('ledger'), ''],
    ['the same with fluids and scipy', `${peer.median_us.toFixed(1)} µs`, `${peer.p95_us.toFixed(1)} µs`, ''],
    ['- that, over ours', `${ratio.toFixed(1)} times`, '', '30 times'],
    ['instructions a full evaluation', thousands(instructions.instructions), '', `${thousands(instructions.committed)} + 5 %`],
    ['compiling the run', ...micro('compile'), ''],
    ['band of 512, native', ...milli(nativeBand), ''],
    ...bandRows(browser.band, nativeBand),
    ["a pointer move's core work, native", ...micro('pointer move'), ''],
    ['growth of a full evaluation, exponent', exponent('full evaluation'), '', '1'],
    ['- operating point alone', exponent('operating point'), '', '1'],
    ['- ledger alone', exponent('ledger'), '', '1'],
    ['growth of compiling, exponent', exponent('compile'), '', ''],
    ...browser.moves.flatMap((moves) => moveRows(moves, milli)),
    ...searchRows(search, milli),
    ...terminalRows(terminal),
  ];

  const lines = [
    `Measured ${new Date().toISOString().slice(0, 10)} on ${os.cpus().length} x ${os.cpus()[0].model.trim()}, ${os.type()} ${os.arch()}.`,
    `${output('rustc', ['--version']).trim()}; ${output(python, ['--version']).trim()}; ${browser.browser}, ${browser.rendering}.`,
    `Other jobs took ${others.map((share) => `${Math.round(share * 100)} %`).join(', ')} of the processors before, between and after the benches.`,
    '',
    ...table([['what', 'median', 'p95', 'bar'], ...rows]),
  ];
  const text = `${lines.join('\n')}\n`;
  writeFileSync(path.join(results, 'table.md'), text);
  console.log(`\n${text}`);
}

/** How busy the processors are while nothing of this runs, over a second. */
async function busyShare() {
  const sums = () => {
    const times = os.cpus().map(({ times: each }) => each);
    const sum = (pick) => times.reduce((total, each) => total + pick(each), 0);
    return { idle: sum(({ idle }) => idle), all: sum((each) => Object.values(each).reduce((total, time) => total + time, 0)) };
  };
  const before = sums();
  await new Promise((resolve) => { setTimeout(resolve, 1000); });
  const after = sums();
  return 1 - (after.idle - before.idle) / (after.all - before.all);
}

function moveRows({ width, height, slowdown, page, bare }, milli) {
  const bar = `p95 ${((slowdown === 1 ? 1 : 2) * FRAME_MS).toFixed(1)} ms`;
  const processor = (of) => `${of.processor.all.toFixed(1)} ms`;
  return [
    [`pointer move, ${width} x ${height}, ${slowdown}x slowdown`, ...milli(page.whole), bar],
    ['- from the next frame on', ...milli(page.drawn), bar],
    ['- main thread a frame, processor time', processor(page), '', ''],
    ['- a bare page dragged the same way', ...milli(bare.whole), ''],
    ['- - from the next frame on', ...milli(bare.drawn), ''],
    ['- - main thread a frame', processor(bare), '', ''],
  ];
}

function bandRows(band, native) {
  if (band.left_out) return [[`band of 512 in Chromium's worker: ${band.left_out}`, '', '', '4 ms']];
  return [
    ["band of 512 in Chromium's worker, message to message", `${band.median.toFixed(1)} ms`, `${band.p95.toFixed(1)} ms`, '4 ms'],
    ['- that, over native', `${(band.median / native.median).toFixed(2)} times`, '', '2.5 times'],
  ];
}

function searchRows({ houses, growth }, milli) {
  const house = houses.find(({ across, down, obstacles }) => across === 40 && down === 30 && obstacles === 60);
  return [
    ["reroutes, 40 x 30 ft, 60 obstacles, in Chromium's worker: first answer", ...milli(house.first), '100 ms'],
    ['- whole set', ...milli(house.whole), '500 ms'],
    ['- from a stop to its answer', ...milli(house.stop), '50 ms'],
    ['- growth of the whole set, exponent', `${growth.area.toFixed(2)} with area, ${growth.obstacles.toFixed(2)} with obstacles`, '', ''],
  ];
}

function terminalRows({ bar, lines, csv, parts, peak_kib: peak }) {
  const second = (count, seconds) => thousands(Math.round(count / seconds));
  const part = (name) => `${((1e6 * parts[`${name}_s`]) / parts.plans).toFixed(1)} µs`;
  const memory = Object.entries(peak).map(([plans, kib]) => `${(kib / 1024).toFixed(1)} MiB at ${thousands(Number(plans))}`);
  return [
    [`${thousands(lines.plans)} plans through the terminal tool, a second of one processor, all in`, second(lines.plans, lines.processor_s), '', thousands(bar)],
    ['- the same as comma-separated values', second(csv.plans, csv.processor_s), '', ''],
    ['- worked out alone, heat included, on one thread', second(parts.plans, parts.working_s), '', thousands(bar)],
    ['- a plan: reading, parsing', `${part('reading')}, ${part('parsing')}`, '', ''],
    ['- a plan: working, printing', `${part('working')}, ${part('printing')}`, '', ''],
    ['- peak memory', memory.join(', '), '', 'flat'],
  ];
}

function thousands(number) {
  return number.toLocaleString('en-US');
}

function table(rows) {
  const widths = rows[0].map((_, column) => Math.max(...rows.map((row) => row[column].length)));
  const lines = rows.map((row) => `| ${row.map((cell, column) => cell.padEnd(widths[column])).join(' | ')} |`);
  return [lines[0], `|${widths.map((width) => '-'.repeat(width + 2)).join('|')}|`, ...lines.slice(1)];
}

function run(command, parts, { mayFail = false } = {}) {
  console.log(`\n== ${command} ${parts.join(' ')}`);
  const { status, error } = spawnSync(command, parts, { cwd: root, stdio: ['ignore', 'inherit', 'inherit'] });
  if (status !== 0 && !mayFail) throw new Error(`${command} ${parts.join(' ')} failed${error ? `: ${error.message}` : ''}`);
  return status === 0;
}

function output(command, parts) {
  return execFileSync(command, parts, { cwd: root, encoding: 'utf8' });
}

function read(name) {
  return JSON.parse(readFileSync(path.join(results, name), 'utf8'));
}
