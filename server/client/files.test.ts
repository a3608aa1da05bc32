import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Workshop, workshop } from '../testing/workshop.ts';

const PAGE = '<!doctype html><title>Clampwright</title>';
const SCRIPT = 'export const answer = 42;';

let folder: string;
let shop: Workshop;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'clampwright-client-'));
  await mkdir(join(folder, 'assets'));
  await writeFile(join(folder, 'index.html'), PAGE);
  await writeFile(join(folder, 'assets', 'main-a1b2c3d4.js'), SCRIPT);
  await writeFile(join(folder, 'assets', 'main-a1b2c3d4.js.gz'), gzipSync(SCRIPT));
  await writeFile(`${folder}-secret.txt`, 'not for the browser');
  shop = await workshop({ webFolder: folder });
});
afterAll(async () => {
  await shop.close();
  await rm(folder, { recursive: true });
  await rm(`${folder}-secret.txt`);
});

const get = (path: string, headers: Readonly<Record<string, string>> = {}) => shop.app.request(path, { headers });

describe('the built client', () => {
  it.each(['/', '/jobs', '/jobs/01991f3c-0000-7000-8000-000000000000/work/J1'])(
    'gives its page at %s, to be asked for anew each time',
    async (path) => {
      const response = await get(path);
      expect(await response.text()).toBe(PAGE);
      expect(response.headers.get('content-type')).toMatch(/^text\/html/);
      expect(response.headers.get('cache-control')).toBe('no-cache');
    },
  );

  it('lets the browser keep what carries its digest in its name', async () => {
    const response = await get('/assets/main-a1b2c3d4.js');
    expect(await response.text()).toBe(SCRIPT);
    expect(response.headers.get('content-type')).toMatch(/javascript/);
    expect(response.headers.get('cache-control')).toBe('public, max-age=31536000, immutable');
  });

  it('sends the packed form to who can unpack it', async () => {
    const response = await get('/assets/main-a1b2c3d4.js', { 'accept-encoding': 'gzip, br' });
    expect(response.headers.get('content-encoding')).toBe('gzip');
    expect(response.headers.get('vary')).toMatch(/accept-encoding/i);
  });

  it('does not pretend that a missing file is a page, nor keep that it was missing', async () => {
    const response = await get('/assets/gone-00000000.js');
    expect(response.status).toBe(404);
    expect(response.headers.get('cache-control')).toBe('no-cache');
  });

  it.each(['/../secret.txt', '/%2e%2e/secret.txt', '/..%2fsecret.txt', '/assets/..%5c..%5csecret.txt'])(
    'gives nothing from outside its folder: %s',
    async (path) => {
      const response = await get(path.replace('secret.txt', `${folder.split('/').at(-1)}-secret.txt`));
      expect(await response.text()).not.toContain('not for the browser');
    },
  );

  it('loads nothing from elsewhere and stands in no frame', async () => {
    const { headers } = await get('/');
    expect(headers.get('content-security-policy')).toBe(
      "default-src 'self'; style-src 'self' 'sha256-38RhXrc7EdReTKsOm23ZPOCUgniTUUcjky8QOOrQx6o='; img-src 'self' data: blob:; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'",
    );
    expect(headers.get('x-content-type-options')).toBe('nosniff');
    expect(headers.get('x-frame-options')).toBe('DENY');
    expect(headers.get('referrer-policy')).toBe('no-referrer');
  });
});
