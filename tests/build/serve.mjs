// A small static server for the built page, under a path of its own so that nothing
// depends on the root of a site. Started by `make serve`; the browser tests import it.

import { createServer } from 'node:http';
import { existsSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { brotliCompressSync, constants } from 'node:zlib';

const TYPES = {
  '.css': 'text/css; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.map': 'application/json',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
};
const COMPRESSED = /\.(css|csv|html|js|json|svg|txt|wasm|webmanifest)$/;

// A page that was built into another folder is served from there.
export const built = process.env.ELBOWROOM_BUILT ?? fileURLToPath(new URL('../../dist/', import.meta.url));

/** Serves `folder` on the loopback address below `base` ("/like/this/"); port 0 takes a free one. */
export async function serve({ folder = built, base = '/', port = 0 }) {
  if (!existsSync(path.join(folder, 'index.html'))) {
    throw new Error(`${folder} holds no built page: run \`trunk build --release\` or \`make serve\` first.`);
  }
  const compressed = new Map();
  const server = createServer((request, response) => answer(request, response, { folder, base, compressed }));
  await new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', resolve);
  });
  const address = `http://localhost:${server.address().port}${base}`;
  const close = () => new Promise((resolve) => {
    server.close(resolve);
    server.closeAllConnections();
  });
  return { address, close };
}

function answer(request, response, { folder, base, compressed }) {
  if (request.method !== 'GET' && request.method !== 'HEAD') return refuse(response, 405);
  let asked;
  try {
    asked = decodeURIComponent(new URL(request.url, 'http://localhost').pathname);
  } catch {
    return refuse(response, 400);
  }
  if (asked === '/' && base !== '/') {
    response.writeHead(302, { location: base }).end();
    return undefined;
  }
  if (!asked.startsWith(base)) return refuse(response, 404);
  const root = path.resolve(folder);
  const file = path.resolve(root, asked.slice(base.length) || 'index.html');
  if (!file.startsWith(root + path.sep) || !existsSync(file) || !statSync(file).isFile()) return refuse(response, 404);

  const headers = {
    'content-type': TYPES[path.extname(file)] ?? 'application/octet-stream',
    // A build's folder is named by its content, so what is in it never changes.
    'cache-control': /^build-[0-9a-f]+\//.test(asked.slice(base.length)) ? 'public, max-age=31536000, immutable' : 'no-cache',
    'x-content-type-options': 'nosniff',
  };
  let body = readFileSync(file);
  if (COMPRESSED.test(file)) {
    headers.vary = 'accept-encoding';
    if (/\bbr\b/.test(request.headers['accept-encoding'] ?? '')) {
      headers['content-encoding'] = 'br';
      body = brotli(file, body, compressed);
    }
  }
  headers['content-length'] = body.length;
  response.writeHead(200, headers).end(request.method === 'HEAD' ? undefined : body);
  return undefined;
}

function refuse(response, status) {
  response.writeHead(status, { 'content-type': 'text/plain; charset=utf-8' }).end(`${status}\n`);
}

// Compressed once per file and state of the file: a new build changes the time.
function brotli(file, body, compressed) {
  const key = `${file} ${statSync(file).mtimeMs} ${body.length}`;
  if (!compressed.has(key)) {
    compressed.set(key, brotliCompressSync(body, { params: { [constants.BROTLI_PARAM_QUALITY]: 9 } }));
  }
  return compressed.get(key);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const port = Number(process.env.PORT ?? 8080);
  try {
    const { address } = await serve({ base: '/elbowroom/', port });
    console.log(`Elbowroom is at ${address} (Ctrl+C stops it)`);
  } catch (problem) {
    console.error(problem.code === 'EADDRINUSE'
      ? `Port ${port} is taken by another program: try \`make serve PORT=${port + 1}\`.`
      : problem.message);
    process.exitCode = 1;
  }
}
