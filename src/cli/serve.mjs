/** A small server for one folder of static files, on this machine. */

import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, resolve, sep } from 'node:path';

/** @type {Record<string, string>} */
const MIME_TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.wasm': 'application/wasm',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.wav': 'audio/wav',
  '.txt': 'text/plain; charset=utf-8',
};

/** The two COOP/COEP lines let WebAssembly use threads; the rest keeps the page to itself. */
const HEADERS = {
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Embedder-Policy': 'require-corp',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
};

/** How many ports after the first are tried when they are taken. */
const PORTS_TRIED = 20;

/**
 * Serves `folder` until `close` is called.
 * @param {{ folder: string, host?: string, port?: number, otherPorts?: boolean }} wish
 *   port 0 takes any free one; `otherPorts` goes on to the next ones when the port is taken.
 * @returns {Promise<{ port: number, address: string, close: () => Promise<void> }>}
 */
export async function serve({ folder, host = '127.0.0.1', port = 4173, otherPorts = false }) {
  const root = resolve(folder);
  const server = createServer((request, response) => {
    answer(root, request, response).catch(() => refuse(response, 500, 'Reading failed.'));
  });
  const taken = await listen(server, host, port, otherPorts ? PORTS_TRIED : 1);
  return {
    port: taken,
    address: `http://${host.includes(':') ? `[${host}]` : host}:${taken}/`,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}

/**
 * @param {import('node:http').Server} server
 * @param {string} host
 * @param {number} first
 * @param {number} tries
 * @returns {Promise<number>} the port that was free
 */
async function listen(server, host, first, tries) {
  for (let port = first; port < first + tries; port += 1) {
    const error = await tryPort(server, host, port);
    const bound = server.address();
    if (error === null && bound !== null && typeof bound === 'object') return bound.port;
    if (error !== null && error.code !== 'EADDRINUSE') throw error;
  }
  const last = first + tries - 1;
  const ports = tries === 1 ? `Port ${first} is` : `Ports ${first} to ${last} are`;
  throw new Error(`${ports} taken on ${host}. Choose another with --port.`);
}

/**
 * @param {import('node:http').Server} server
 * @param {string} host
 * @param {number} port
 * @returns {Promise<NodeJS.ErrnoException | null>}
 */
function tryPort(server, host, port) {
  return new Promise((done) => {
    const fail = (/** @type {NodeJS.ErrnoException} */ error) => done(error);
    server.once('error', fail);
    server.listen(port, host, () => {
      server.off('error', fail);
      done(null);
    });
  });
}

/**
 * @param {string} root
 * @param {import('node:http').IncomingMessage} request
 * @param {import('node:http').ServerResponse} response
 */
async function answer(root, request, response) {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    return refuse(response, 405, 'This server only gives files.');
  }
  const path = fileFor(root, request.url ?? '/');
  const info = path === null ? null : await stat(path).catch(() => null);
  if (path === null || !info?.isFile()) return refuse(response, 404, 'There is no such file.');
  response.writeHead(200, {
    ...HEADERS,
    'Content-Type': MIME_TYPES[extname(path)] ?? 'application/octet-stream',
    'Content-Length': info.size,
    'Cache-Control': cacheRule(path),
  });
  if (request.method === 'HEAD') return response.end();
  return createReadStream(path)
    .on('error', () => response.destroy())
    .pipe(response);
}

/**
 * The file a request asks for, or null when it lies outside the folder or is hidden.
 * @param {string} root an absolute folder
 * @param {string} url as it came, with query
 * @returns {string | null}
 */
export function fileFor(root, url) {
  let path;
  try {
    path = decodeURIComponent(url.split(/[?#]/, 1)[0] ?? '');
  } catch {
    return null;
  }
  if (/[\0\\]/.test(path) || path.split('/').some((part) => part.startsWith('.'))) return null;
  const file = resolve(root, `.${path.endsWith('/') ? `${path}index.html` : path}`);
  return file.startsWith(root + sep) ? file : null;
}

/**
 * Files in assets/ carry a hash in their name and never change; all others are asked for again.
 * @param {string} path
 */
function cacheRule(path) {
  return path.includes(`${sep}assets${sep}`) ? 'public, max-age=31536000, immutable' : 'no-cache';
}

/**
 * @param {import('node:http').ServerResponse} response
 * @param {number} status
 * @param {string} sentence
 */
function refuse(response, status, sentence) {
  if (response.headersSent) return response.destroy();
  response.writeHead(status, { ...HEADERS, 'Content-Type': 'text/plain; charset=utf-8' });
  return response.end(`${sentence}\n`);
}
