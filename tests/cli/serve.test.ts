import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { fileFor, serve } from '../../src/cli/serve.mjs';

const outer = mkdtempSync(join(tmpdir(), 'followrest-serve-'));
const folder = join(outer, 'dist');
let page: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  mkdirSync(join(folder, 'assets'), { recursive: true });
  writeFileSync(join(outer, 'secret.txt'), 'secret');
  writeFileSync(join(folder, 'index.html'), '<p>hello</p>');
  writeFileSync(join(folder, '.built-from'), 'hidden');
  writeFileSync(join(folder, 'assets', 'ear-1a2b.wasm'), 'wasm');
  writeFileSync(join(folder, 'manifest.webmanifest'), '{}');
  page = await serve({ folder, port: 0 });
});

afterAll(async () => {
  await page.close();
  rmSync(outer, { recursive: true });
});

/** Sends the path as it is; fetch would tidy the dots away. */
function get(path: string, method = 'GET') {
  return new Promise<{ status: number; headers: Record<string, unknown>; body: string }>((done) => {
    request({ port: page.port, path, method }, (response) => {
      let body = '';
      response.on('data', (part) => {
        body += part;
      });
      response.on('end', () =>
        done({ status: response.statusCode ?? 0, headers: response.headers, body }),
      );
    }).end();
  });
}

describe('the server', () => {
  it('gives index.html for the bare address, never kept without asking', async () => {
    const { status, headers, body } = await get('/?from=here');
    expect([status, body]).toEqual([200, '<p>hello</p>']);
    expect(headers['cache-control']).toBe('no-cache');
  });

  // Media types as registered with IANA; the isolation headers as the HTML standard defines them.
  it.each([
    ['/index.html', 'text/html; charset=utf-8'],
    ['/assets/ear-1a2b.wasm', 'application/wasm'],
    ['/manifest.webmanifest', 'application/manifest+json; charset=utf-8'],
  ])('gives %s as %s, isolated', async (path, type) => {
    const { headers } = await get(path);
    expect(headers).toMatchObject({
      'content-type': type,
      'cross-origin-opener-policy': 'same-origin',
      'cross-origin-embedder-policy': 'require-corp',
    });
  });

  it('lets files with a hash in their name be kept for ever', async () => {
    const { headers } = await get('/assets/ear-1a2b.wasm');
    expect(headers['cache-control']).toContain('immutable');
  });

  it.each([
    '/../secret.txt',
    '/%2e%2e/secret.txt',
    '/assets/..%2f..%2fsecret.txt',
    '/..%5csecret.txt',
    '/.built-from',
    '/index.html%00',
    '/%',
    '/assets',
    '/absent.js',
  ])('has no file at %s', async (path) => {
    const { status, body } = await get(path);
    expect(status).toBe(404);
    expect(body).not.toContain('secret');
  });

  it('takes no other method than asking for files', async () => {
    expect((await get('/index.html', 'POST')).status).toBe(405);
    expect(await get('/index.html', 'HEAD')).toMatchObject({ status: 200, body: '' });
  });

  it('goes on to the next port only when it may', async () => {
    const next = await serve({ folder, port: page.port, otherPorts: true });
    expect(next.port).toBeGreaterThan(page.port);
    await next.close();
    await expect(serve({ folder, port: page.port })).rejects.toThrow('Choose another with --port');
  });

  it('keeps to its folder even where another begins with the same letters', () => {
    expect(fileFor('/srv/dist', '/a.js')).toBe('/srv/dist/a.js');
    expect(fileFor('/srv/dist', '/../dist-old/a.js')).toBeNull();
  });
});
