// Counts the instructions of one full evaluation of the run of 20 elements and compares
// them with the committed number: more than 5 % above it fails.
//
//   node tests/bench/instructions.mjs           compares
//   node tests/bench/instructions.mjs --write   commits this machine's number instead
//
// Two runs of different length under callgrind, and their difference: what starting and
// ending the program costs drops out. Unlike a time, the count is the same on a busy
// machine. It hangs on the compiler's version, the target and the C library (its
// mathematics and its allocator), not on the processor: the C library is told to use the
// same code everywhere. Compiler flags from outside are left out.

import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const kept = fileURLToPath(new URL('instructions.json', import.meta.url));
const results = fileURLToPath(new URL('../results/bench/', import.meta.url));

const FEW = 500;
const MANY = 1500;
const MOST_ABOVE = 0.05;
// Otherwise it picks its variant of `pow`, `ln` and `memcpy` by what the processor can do.
const SAME_CODE_EVERYWHERE = 'glibc.cpu.hwcaps=-AVX512F,-AVX512VL,-AVX512BW,-AVX2,-AVX,-FMA,-FMA4,-SSE4_1,-SSSE3,-ERMS,-FSRM,-AVX_Fast_Unaligned_Load,-Fast_Unaligned_Copy';

main();

function main() {
  const depends = { ...compiler(), c_library: cLibrary() };
  const program = build();
  const instructions = Math.round((count(program, MANY) - count(program, FEW)) / (MANY - FEW));
  mkdirSync(results, { recursive: true });
  if (process.argv.includes('--write')) {
    writeFileSync(kept, `${JSON.stringify({ instructions_per_evaluation: instructions, ...depends }, null, 2)}\n`);
    console.log(`${instructions} instructions an evaluation, written to tests/bench/instructions.json`);
    return;
  }
  const { instructions_per_evaluation: committed, ...then } = JSON.parse(readFileSync(kept, 'utf8'));
  const above = instructions / committed - 1;
  const change = `${above >= 0 ? '+' : ''}${(above * 100).toFixed(1)} %`;
  writeFileSync(`${results}instructions.json`, `${JSON.stringify({ instructions, committed, ...depends })}\n`);
  console.log(`${instructions} instructions an evaluation, ${committed} committed: ${change}`);
  for (const [name, value] of Object.entries(depends)) {
    if (value !== then[name]) console.log(`${name}: ${value} here, ${then[name]} when the number was taken`);
  }
  if (depends.target !== then.target) {
    console.log('Not compared: the number is of another target.');
  } else if (depends.compiler !== then.compiler) {
    fail('The number is of another compiler: take it anew with --write, and say so in the commit.');
  } else if (above > MOST_ABOVE) {
    fail(`That is more than ${MOST_ABOVE * 100} % above. Take the cost back, or take the number anew with --write and say in the commit why.`);
  } else if (above < -MOST_ABOVE) {
    console.log('Much less: take the number anew with --write, so that the gain is kept.');
  }
}

function build() {
  const command = ['bench', '--locked', '--no-run', '--bench', 'instructions', '--message-format=json-render-diagnostics'];
  const messages = execFileSync('cargo', command, {
    cwd: root,
    env: { ...process.env, RUSTFLAGS: '', CARGO_ENCODED_RUSTFLAGS: '' },
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'inherit'],
    maxBuffer: 1 << 26,
  });
  const artifacts = messages.split('\n').filter(Boolean).map((line) => JSON.parse(line));
  return artifacts.find(({ target, executable }) => target?.name === 'instructions' && executable).executable;
}

function count(program, times) {
  const command = ['--tool=callgrind', '--callgrind-out-file=/dev/null', program, String(times)];
  // Only the C library's own switch: what else stands in the environment moves the stack.
  const env = { PATH: process.env.PATH, GLIBC_TUNABLES: SAME_CODE_EVERYWHERE };
  let output;
  try {
    output = execFileSync('sh', ['-c', 'exec valgrind "$@" 2>&1', 'sh', ...command], { env, encoding: 'utf8' });
  } catch (problem) {
    throw new Error(`valgrind did not run (\`make setup\` installs it):\n${problem.stdout ?? problem.message}`);
  }
  return Number(output.match(/Collected : (\d+)/)[1]);
}

function compiler() {
  const text = execFileSync('rustc', ['-vV'], { cwd: root, encoding: 'utf8' });
  return { compiler: `rustc ${text.match(/^release: (.*)$/m)[1]}`, target: text.match(/^host: (.*)$/m)[1] };
}

function cLibrary() {
  try {
    return execFileSync('getconf', ['GNU_LIBC_VERSION'], { encoding: 'utf8' }).trim();
  } catch {
    return 'not glibc';
  }
}

function fail(why) {
  console.error(why);
  process.exitCode = 1;
}
