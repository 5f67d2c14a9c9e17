// Scripts and styles without what only their reader needs: blanks, comments, long names.

import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { transformSync } from 'esbuild';

/** `text` of a script or a style sheet, in fewer letters. */
function shrunk(text, loader) {
  return transformSync(text, { loader, minify: true, legalComments: 'none', target: 'esnext', charset: 'utf8' }).code;
}

/** Makes the script `file` smaller in its place. */
export function shrinkScript(file) {
  writeFileSync(file, shrunk(readFileSync(file, 'utf8'), 'js'));
}

/** The style sheets `names` of `folder` as one, in their order: one request, and one dictionary to compress by. */
export function oneStyleSheet(folder, names) {
  return shrunk(names.map((name) => readFileSync(path.join(folder, name), 'utf8')).join('\n'), 'css');
}
