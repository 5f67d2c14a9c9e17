// Optimises a program for the browser in its place.
//
// Optimised files are kept by the hash of what made them, because the optimiser takes
// longer than everything else in a build that changed nothing.

import { createHash } from 'node:crypto';
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
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

/** Optimises `file`, and keeps the outcome in a folder under `target`. */
export function optimise(file, target) {
  const require = createRequire(import.meta.url);
  const binaryen = path.dirname(require.resolve('binaryen/package.json'));
  const { version } = require('binaryen/package.json');
  const key = createHash('sha256')
    .update(JSON.stringify([version, WASM_LEVEL, WASM_FEATURES]))
    .update(readFileSync(file))
    .digest('hex');
  const kept = path.join(target, 'wasm-opt', `${path.basename(file)}-${key}`);
  if (!existsSync(kept)) {
    mkdirSync(path.dirname(kept), { recursive: true });
    const unfinished = `${kept}.unfinished`;
    execFileSync(
      process.execPath,
      [path.join(binaryen, 'bin', 'wasm-opt'), file, WASM_LEVEL, ...WASM_FEATURES, '-o', unfinished],
      { stdio: 'inherit' },
    );
    renameSync(unfinished, kept);
  }
  writeFileSync(file, readFileSync(kept));
}
