// Fuzzes the core: `node tests/fuzz/run.mjs [--seconds 600] [--keep] [TARGET ...]`.
//
// Builds the targets of this folder with coverage counters (flags of the stable compiler; no other
// toolchain) and runs each for so long, one process at a time, from the committed corpus. A panic, an
// input that takes over a second (by the clock: leave it a processor), or memory past the limit is a failure, whose input is left in
// target/fuzz/found. --keep puts what covered more into the corpus, smallest first, within its bounds.

import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { createHash } from 'node:crypto';
import { parseArgs } from 'node:util';

const folder = fileURLToPath(new URL('.', import.meta.url));
const root = path.join(folder, '../..');
const work = path.join(root, 'target/fuzz');

/** Longest input, bytes: a plan of some dozen elements; a typed text past its own limit; 40 steps. */
const TARGETS = { plan_file: 32_768, jobs_file: 32_768, lesson_file: 32_768, share_link: 8_192, typed_length: 256, editor_actions: 320 };
/** An input may take so long, s, and the process hold so much, MB. */
const LONGEST = 1;
const MEMORY = 1024;
/** What --keep leaves in a target's corpus: files, and bytes a file. */
const MOST_KEPT = 150;
const LARGEST_KEPT = 8_192;

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { seconds: { type: 'string', default: '600' }, keep: { type: 'boolean', default: false } },
});
const targets = positionals.length > 0 ? positionals : Object.keys(TARGETS);
const unknown = targets.find((target) => !(target in TARGETS));
if (unknown) throw new Error(`There is no target ${unknown}, only ${Object.keys(TARGETS).join(', ')}.`);

build();
const results = targets.map(fuzzed);
console.log('\ntarget            seconds       inputs   a second   covered   slowest   memory   outcome');
for (const each of results) {
  console.log([
    each.target.padEnd(16), String(each.seconds).padStart(8), String(each.inputs).padStart(13), String(each.rate).padStart(10),
    String(each.covered).padStart(10), `${each.slowest} s`.padStart(9), `${each.memory} MB`.padStart(9), `  ${each.outcome}`,
  ].join(' '));
}
const failed = results.filter(({ outcome }) => outcome !== 'clean').length;
console.log(`\n${results.length - failed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;

function build() {
  const counters = ['-Cpasses=sancov-module', ...[
    '-sanitizer-coverage-level=4', '-sanitizer-coverage-inline-8bit-counters',
    '-sanitizer-coverage-pc-table', '-sanitizer-coverage-trace-compares',
  ].map((flag) => `-Cllvm-args=${flag}`), '-Ccodegen-units=1'];
  // A target of its own name keeps the counters out of build scripts and macros.
  const host = spawnSync('rustc', ['-vV'], { encoding: 'utf8' }).stdout.match(/^host: (.*)$/m)[1];
  const built = spawnSync('cargo', ['build', '--release', '--locked', '--target', host], {
    cwd: folder,
    stdio: 'inherit',
    env: { ...process.env, CARGO_TARGET_DIR: path.join(work, 'build'), RUSTFLAGS: counters.join(' ') },
  });
  if (built.status !== 0) throw new Error('The targets could not be built.');
  // Only what is run: another run's program may be at work.
  for (const target of targets) {
    copyFileSync(path.join(work, 'build', host, 'release', target), path.join(work, target));
  }
}

function fuzzed(target) {
  const [grown, found, corpus] = [path.join(work, 'grown', target), path.join(work, 'found', target), path.join(folder, 'corpus', target)];
  for (const each of [grown, found, corpus]) mkdirSync(each, { recursive: true });
  const dictionary = path.join(work, 'words.txt');
  writeFileSync(dictionary, words());
  const run = spawnSync(path.join(work, target), [
    grown, corpus, `-max_total_time=${values.seconds}`, `-max_len=${TARGETS[target]}`, `-timeout=${LONGEST}`,
    `-rss_limit_mb=${MEMORY}`, `-artifact_prefix=${found}/`, '-print_final_stats=1', ...(target.endsWith('_file') ? [`-dict=${dictionary}`] : []),
  ], { encoding: 'utf8', maxBuffer: 1 << 28 });
  const said = run.stderr;
  const figure = (name) => Number(said.match(new RegExp(`stat::${name}:\\s+(\\d+)`))?.[1] ?? NaN);
  const clean = run.status === 0;
  if (!clean) console.error(said.split('\n').slice(-60).join('\n'));
  if (clean && values.keep) keep(target, grown, corpus);
  return {
    target,
    seconds: Number(values.seconds),
    inputs: figure('number_of_executed_units'),
    rate: figure('average_exec_per_sec'),
    covered: Number([...said.matchAll(/ cov: (\d+) /g)].at(-1)?.[1] ?? NaN),
    slowest: figure('slowest_unit_time_sec'),
    memory: figure('peak_rss_mb'),
    outcome: clean ? 'clean' : `failed: ${readdirSync(found).join(' ') || run.signal || run.status}`,
  };
}

/** The names of a plan's fields and kinds, for the fuzzer to put in. */
function words() {
  const schema = readFileSync(path.join(root, 'public/plan.schema.json'), 'utf8');
  const found = new Set([...schema.matchAll(/"([a-z][a-z0-9_ -]{1,40})"/g)].map(([, word]) => word));
  return [...found].map((word) => `"\\"${word}\\""`).join('\n');
}

/** The smallest set of inputs that covers as much, the smallest files first, as far as the bounds let. */
function keep(target, grown, corpus) {
  const least = path.join(work, 'least', target);
  rmSync(least, { recursive: true, force: true });
  mkdirSync(least, { recursive: true });
  spawnSync(path.join(work, target), ['-merge=1', `-max_len=${TARGETS[target]}`, least, corpus, grown], { stdio: 'ignore' });
  const files = readdirSync(least).map((name) => path.join(least, name));
  files.sort((a, b) => statSync(a).size - statSync(b).size);
  for (const file of files.filter((file) => statSync(file).size <= LARGEST_KEPT).slice(0, MOST_KEPT)) {
    const name = createHash('sha256').update(readFileSync(file)).digest('hex').slice(0, 16);
    if (!existsSync(path.join(corpus, name))) copyFileSync(file, path.join(corpus, name));
  }
}
