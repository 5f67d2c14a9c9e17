// The step after Trunk: takes the staged files of a build and makes them the page that
// is published. Run by Trunk (see Trunk.toml); needs the environment that Trunk sets.
//
// 1. parts the page's program in two files, makes one style sheet of the page's, and optimises each .wasm
//    and shrinks each script (release builds only);
// 2. moves every file into one folder named by the hash of the whole build, so that a
//    page, its worker and its styles can never come from two builds;
// 3. writes the names, the build's name and the content security policy into index.html;
// 4. writes the same names into manifest and service worker, and precache.json for tests;
// 5. prints what a first visit weighs, and refuses a build that weighs too much;
// 6. builds the JavaScript module for other programs beside the page.

import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, readdirSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { brotliCompressSync, constants } from 'node:zlib';
import { buildApi } from './api.mjs';
import { optimise } from './optimise.mjs';
import { POLICY } from './policy.mjs';
import { oneStyleSheet, shrinkScript } from './shrink.mjs';
import { split } from './split.mjs';

const staging = process.env.TRUNK_STAGING_DIR;
const release = process.env.TRUNK_PROFILE === 'release';
if (!staging) throw new Error('TRUNK_STAGING_DIR is not set: this step is run by `trunk build`.');

// Files that browsers look for beside index.html, and that keep their names.
const MANIFEST = 'manifest.webmanifest';
const WORKER = 'service-worker.js';
const BESIDE_INDEX = ['index.html', MANIFEST, WORKER];
const STYLES = 'page.css';

// All files before first use, bytes as brotli packs them. Texts and views that only the rest of the page
// shows come back into the first file as soon as something there names them.
const MOST_BEFORE_FIRST_USE = 300_000;

// As Trunk writes them.
const STYLE_LINK = /[ \t]*<link rel="stylesheet" href="(?:\.\/)?([^"]+)"[^>]*>\n?/g;

split(path.join(targetDirectory(), 'wasm32-unknown-unknown', release ? 'page' : 'debug', 'app.wasm'), staging, 'app');
const styles = [...readFileSync(path.join(staging, 'index.html'), 'utf8').matchAll(STYLE_LINK)].map(([, name]) => name);
writeFileSync(path.join(staging, STYLES), oneStyleSheet(staging, styles));
for (const name of styles) rmSync(path.join(staging, name));
const files = readdirSync(staging, { recursive: true })
  .map((name) => name.split(path.sep).join('/'))
  .filter((name) => statSync(path.join(staging, name)).isFile())
  .sort();
const read = (name) => readFileSync(path.join(staging, name));

if (release) {
  for (const name of files) {
    if (name.endsWith('.wasm')) optimise(path.join(staging, name), targetDirectory());
    // The finished worker has marks of its own to be filled in.
    else if (name.endsWith('.js') && name !== WORKER) shrinkScript(path.join(staging, name));
  }
}

buildApi(path.join(staging, 'api'), { release });
const api = await import(pathToFileURL(path.join(staging, 'api', 'elbowroom.js')));
const exampleView = () => api.view(api.example());
const build = `build-${hashOfBuild()}`;
const moved = files.filter((name) => !BESIDE_INDEX.includes(name));
for (const name of moved) {
  const target = path.join(staging, build, name);
  mkdirSync(path.dirname(target), { recursive: true });
  renameSync(path.join(staging, name), target);
}

writeFileSync(path.join(staging, 'index.html'), withFirstSight(finishedPage(read('index.html').toString())));
writeFileSync(path.join(staging, MANIFEST), finishedManifest(JSON.parse(read(MANIFEST))));

const published = files.map((name) => (moved.includes(name) ? `${build}/${name}` : name));
writeFileSync(path.join(staging, WORKER), finishedWorker(read(WORKER).toString()));
const sizes = published.map((name) => {
  const bytes = read(name);
  return { name, size: bytes.length, brotli: brotliSize(bytes) };
});
writeFileSync(
  path.join(staging, 'precache.json'),
  `${JSON.stringify({ build, files: sizes.map(({ name, size }) => ({ name, size })) }, null, 2)}\n`,
);
printSizes();

function targetDirectory() {
  return path.resolve(process.env.TRUNK_SOURCE_DIR, process.env.CARGO_TARGET_DIR ?? 'target');
}

function hashOfBuild() {
  const hash = createHash('sha256').update(POLICY);
  for (const name of files) hash.update(name).update('\0').update(read(name)).update('\0');
  return hash.digest('hex').slice(0, 16);
}

function finishedPage(source) {
  const page = source
    // Trunk leaves its own link for the main program in place when it injects no scripts.
    .replace(/[ \t]*<link\b[^>]*\bdata-trunk\b[^>]*>\n?/g, '')
    .replace(STYLE_LINK, '')
    .replace('</head>', `  <link rel="stylesheet" href="${STYLES}">\n  </head>`)
    .replace(/\b(href|src)="(?:\.\/)?([^":?#]+)"/g, (whole, attribute, name) =>
      moved.includes(name) ? `${attribute}="${build}/${name}"` : whole)
    // Lines that held a link which Trunk has taken out.
    .replace(/\n[ \t]+(?=\n)/g, '');
  return insertedAfter(page, '<meta charset="utf-8">', [
    `<meta http-equiv="Content-Security-Policy" content="${POLICY}">`,
    `<meta name="elbowroom-build" content="${build}">`,
  ]);
}

// What is seen before the program is there: the example's drawing and totals, from the same core.
function withFirstSight(page) {
  const { title, drawing, totals } = exampleView();
  const inert = (text) => text.replace(/[&<>]/g, (letter) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;' })[letter]);
  const total = ({ name, figure, against }) => `<div><dt>${inert(name)}</dt><dd>${inert(figure)}</dd><dd class="fine">${inert(against)}</dd></div>`;
  const sight = `<div class="first-sight"><p class="first-title">${inert(title)}</p><dl>${totals.map(total).join('')}</dl>${drawing.replace(/^<\?xml[^>]*>/, '')}</div>`;
  return insertedAfter(page, '<!-- first sight -->', [sight]);
}

// A manifest's addresses are relative to itself, and its icons are in the build's folder.
function finishedManifest(manifest) {
  const icons = manifest.icons.map((icon) => ({ ...icon, src: `${build}/${icon.src}` }));
  return `${JSON.stringify({ ...manifest, icons }, null, 2)}\n`;
}

// The service worker keeps every file but itself.
function finishedWorker(source) {
  const kept = published.filter((name) => name !== WORKER);
  return [["'%BUILD%'", JSON.stringify(build)], ["['%FILES%']", JSON.stringify(kept, null, 2)]].reduce(
    (text, [mark, value]) => {
      if (text.split(mark).length !== 2) throw new Error(`${WORKER} must hold ${mark} exactly once.`);
      return text.replace(mark, value);
    },
    source,
  );
}

function insertedAfter(page, mark, lines) {
  if (page.split(mark).length !== 2) throw new Error(`index.html must hold ${mark} exactly once.`);
  return page.replace(mark, [mark, ...lines].join('\n    '));
}

function brotliSize(bytes) {
  return brotliCompressSync(bytes, {
    params: { [constants.BROTLI_PARAM_QUALITY]: 11, [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length },
  }).length;
}

// What the first figures wait for: the page, its styles, the program and what starts it. The workers,
// icons, guide, lessons and schema come once it stands.
function isFirst(name) {
  const file = path.basename(name);
  return name === 'index.html' || file.startsWith('app') || ['__wasm_split.js', 'kept.js', 'boot.js', 'offline.js', 'icon.svg', MANIFEST].includes(file)
    || file === STYLES;
}

function printSizes() {
  const sum = (name, of) => ({
    name,
    size: of.reduce((sum, { size }) => sum + size, 0),
    brotli: of.reduce((sum, { brotli }) => sum + brotli, 0),
  });
  const first = sizes.filter(({ name }) => isFirst(name));
  const before = sum('all files before first use', first);
  console.log(`\n${build}${release ? '' : ' (not optimised)'}`);
  console.log(`${'bytes'.padStart(12)}${'brotli'.padStart(12)}`);
  for (const { name, size, brotli } of [...sizes, before, sum('all files', sizes)]) {
    console.log(`${String(size).padStart(12)}${String(brotli).padStart(12)}  ${name}`);
  }
  if (release && before.brotli > MOST_BEFORE_FIRST_USE) {
    throw new Error(`What comes before first use weighs ${before.brotli} bytes; it may weigh ${MOST_BEFORE_FIRST_USE}.`);
  }
}
