// Builds the JavaScript module for other programs: `api/` in the published page, beside the page's own
// folder and outside what a visitor's browser keeps. Called by finish.mjs; by itself:
//
//   node tests/build/api.mjs FOLDER [--release]

import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { optimise } from './optimise.mjs';
import { planTypes } from './plan_types.mjs';
import { POLICY } from './policy.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const sources = path.join(root, 'src', 'bin', 'api');
const WASM_TARGET = 'wasm32-unknown-unknown';
const POLICY_MARK = '%POLICY%';

/** Builds the module into `folder`, which is made anew. */
export function buildApi(folder, { release }) {
  const target = path.resolve(root, process.env.CARGO_TARGET_DIR ?? 'target');
  // Small before fast, as the page's own program: whoever asks for one plan waits for the loading alone.
  const profile = release ? ['--profile', 'page'] : [];
  execFileSync('cargo', ['build', '--locked', '--quiet', '--target', WASM_TARGET, '--no-default-features', '--features', 'api', '--bin', 'api', ...profile], { cwd: root, stdio: 'inherit' });
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const program = path.join(target, WASM_TARGET, release ? 'page' : 'debug', 'api.wasm');
  execFileSync('wasm-bindgen', ['--target', 'web', '--no-typescript', '--out-dir', folder, '--out-name', 'program', program], { stdio: 'inherit' });
  if (release) optimise(path.join(folder, 'program_bg.wasm'), target);
  cpSync(sources, folder, { recursive: true, filter: (source) => !source.endsWith('.rs') });
  for (const name of readdirSync(folder, { recursive: true }).filter((each) => each.endsWith('.html'))) {
    const file = path.join(folder, name);
    const text = readFileSync(file, 'utf8');
    if (text.split(POLICY_MARK).length !== 2) throw new Error(`${name} must hold ${POLICY_MARK} exactly once.`);
    writeFileSync(file, text.replace(POLICY_MARK, POLICY));
  }
  const schema = JSON.parse(readFileSync(path.join(root, 'public', 'plan.schema.json'), 'utf8'));
  writeFileSync(path.join(folder, 'plan.d.ts'), planTypes(schema));
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const [folder, ...more] = process.argv.slice(2);
  buildApi(path.resolve(folder), { release: more.includes('--release') });
}
