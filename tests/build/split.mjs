// Parts the page's program in two files at the boundary that src/web/rest.rs names: the first look's, and
// the rest, which is fetched once the drawing stands.

import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

/** Puts the parted program called `name` in `folder`, in the place of the whole one that `compiled` is. */
export function split(compiled, folder, name) {
  const parts = mkdtempSync(path.join(tmpdir(), 'elbowroom-'));
  try {
    execFileSync('wasm-split-cli', [compiled, parts, '--target', 'web', '--out-name', name], { stdio: ['ignore', 'ignore', 'inherit'] });
    const first = `${name}.wasm`;
    execFileSync('wasm-bindgen', [
      // What the rest calls of the first part goes by the linker's own names.
      '--keep-lld-exports', '--target', 'web', '--no-typescript', '--out-name', name, '--out-dir', folder, path.join(parts, first),
    ], { stdio: 'inherit' });
    for (const part of readdirSync(parts).filter((each) => each !== first)) cpSync(path.join(parts, part), path.join(folder, part));
  } finally {
    rmSync(parts, { recursive: true, force: true });
  }
}
