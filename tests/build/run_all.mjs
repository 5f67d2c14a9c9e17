// Runs every check of the project, one after the other, and ends with one line that
// counts over all of them. A failed stage does not stop the next.
//
// A stage without tests of its own (formatting, lints, a build) counts as one check.

import { spawn } from 'node:child_process';
import { readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const cache = process.env.XDG_CACHE_HOME || path.join(process.env.HOME, '.cache');
const tools = path.join(cache, 'elbowroom', 'tools', 'bin');
const python = path.join(cache, 'elbowroom', 'venv', 'bin', 'python');
const playwright = { command: 'tests/node_modules/.bin/playwright', report: 'tests/results/browser.json' };

const environment = { ...process.env, PATH: `${tools}${path.delimiter}${process.env.PATH}`, CARGO_TERM_COLOR: 'never' };
// Trunk refuses the value 1, which is what everybody sets.
delete environment.NO_COLOR;

const full = process.env.ELBOWROOM_FULL === '1';
const denyWarnings = ['--', '-D', 'warnings'];
const page = ['--locked', '--target', 'wasm32-unknown-unknown', '--features', 'web', '--lib', '--bin', 'app', '--bin', 'worker', '--bin', 'api'];

await main();

async function main() {
  const setUp = await run(['bash', 'tests/build/setup.sh', 'tests']);
  if (setUp.status !== 0) return finish([{ name: 'set-up', passed: 0, failed: 1, seconds: setUp.seconds }]);

  const nextest = (await run(['cargo', 'nextest', '--version'], { quiet: true })).status === 0;
  const rustTests = nextest
    ? { command: ['cargo', 'nextest', 'run', '--locked', '--no-fail-fast'], count: countNextest }
    : { command: ['cargo', 'test', '--locked', '--no-fail-fast', '--lib', '--bins', '--tests'], count: countCargoTest };
  const stages = [
    { name: 'formatting', command: ['cargo', 'fmt', '--check'] },
    { name: 'lints, terminal and tests', command: ['cargo', 'clippy', '--locked', '--all-targets', ...denyWarnings] },
    { name: 'lints, page', command: ['cargo', 'clippy', ...page, ...denyWarnings] },
    { name: 'Rust tests', ...rustTests },
    { name: 'documentation tests', command: ['cargo', 'test', '--locked', '--doc', '--no-fail-fast'], count: countCargoTest },
    { name: 'reference data', command: [python, 'tests/reference/generate.py', '--check'] },
    { name: 'page build', command: ['trunk', 'build', '--release'] },
    {
      name: 'browser tests',
      command: [playwright.command, 'test', '-c', 'tests/browser/playwright.config.mjs'],
      // An older build must not be tested in place of one that failed.
      needs: 'page build',
      before: () => rmSync(path.join(root, playwright.report), { force: true }),
      count: countPlaywright,
    },
    {
      name: 'Firefox and WebKitGTK',
      command: ['node', '--test', '--test-reporter=tap', 'tests/other_browsers/smoke.test.mjs'],
      needs: 'page build',
      count: countTap,
    },
    ...(full ? [{ name: 'fuzzing', command: ['node', 'tests/fuzz/run.mjs'], count: countLine }] : []),
  ];

  const results = [];
  for (const stage of stages) {
    const missing = results.find(({ name, failed }) => name === stage.needs && failed > 0);
    results.push(missing ? { name: stage.name, passed: 0, failed: 1, seconds: 0 } : await resultOf(stage));
  }
  return finish(results);
}

async function resultOf({ name, command, count, before }) {
  console.log(`\n== ${name}: ${command.join(' ')}`);
  before?.();
  const { status, output, seconds } = await run(command);
  if (!count) return { name, passed: status === 0 ? 1 : 0, failed: status === 0 ? 0 : 1, seconds };
  const { passed, failed } = count(output);
  // A runner that ended badly, or ran nothing, without counting a failure did not do its work.
  const broken = failed === 0 && (status !== 0 || passed === 0);
  return { name, passed, failed: broken ? 1 : failed, seconds };
}

function run([command, ...rest], { quiet = false } = {}) {
  const started = performance.now();
  return new Promise((resolve) => {
    let output = '';
    const child = spawn(command, rest, { cwd: root, env: environment, stdio: ['ignore', 'pipe', 'pipe'] });
    const take = (stream) => (chunk) => {
      output += chunk;
      if (!quiet) stream.write(chunk);
    };
    child.stdout.on('data', take(process.stdout));
    child.stderr.on('data', take(process.stderr));
    const end = (status) => resolve({ status, output, seconds: (performance.now() - started) / 1000 });
    child.on('error', (problem) => {
      if (!quiet) console.error(`${command}: ${problem.message}`);
      end(127);
    });
    child.on('close', (status) => end(status ?? 1));
  });
}

// Summary [0.1s] 5 tests run: 3 passed (1 slow), 1 failed, 1 timed out, 2 skipped
function countNextest(output) {
  const [, , counts] = output.match(/^\s*Summary \[[^\]]*\]\s+(\S+) tests? run: (.*)$/m) ?? [];
  return { passed: numberBefore('passed', counts), failed: numberBefore('(?:failed|exec failed|timed out)', counts) };
}

// test result: ok. 3 passed; 0 failed; 0 ignored; ... (one such line a test binary)
function countCargoTest(output) {
  const counts = output.match(/^test result: .*$/gm)?.join('\n');
  return { passed: numberBefore('passed', counts), failed: numberBefore('failed', counts) };
}

function numberBefore(word, counts = '') {
  return [...counts.matchAll(new RegExp(`(\\d+) ${word}\\b`, 'g'))].reduce((sum, [, number]) => sum + Number(number), 0);
}

// # pass 2
function countTap(output) {
  const figure = (name) => Number(output.match(new RegExp(`^# ${name} (\\d+)$`, 'm'))?.[1] ?? 0);
  return { passed: figure('pass'), failed: figure('fail') + figure('cancelled') };
}

// 3 passed, 1 failed
function countLine(output) {
  const counts = output.match(/^\d+ passed, \d+ failed$/m)?.[0];
  return { passed: numberBefore('passed', counts), failed: numberBefore('failed', counts) };
}

function countPlaywright() {
  try {
    const { stats, errors } = JSON.parse(readFileSync(path.join(root, playwright.report), 'utf8'));
    return { passed: stats.expected, failed: stats.unexpected + stats.flaky + errors.length };
  } catch {
    return { passed: 0, failed: 0 };
  }
}

function finish(results) {
  console.log('');
  for (const { name, passed, failed, seconds } of results) {
    console.log(`${name.padEnd(28)}${String(passed).padStart(6)} passed${String(failed).padStart(6)} failed${seconds.toFixed(1).padStart(9)} s`);
  }
  const sum = (which) => results.reduce((total, result) => total + result[which], 0);
  process.exitCode = sum('failed') === 0 ? 0 : 1;
  console.log(`${sum('passed')} passed, ${sum('failed')} failed`);
}
