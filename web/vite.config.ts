import { readdir, readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { brotliCompress, gzip } from 'node:zlib';
import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const OUT = here('dist/app');

/** What every screen needs: one file instead of a dozen, and the same one after a new version of ours. */
const FRAME = /node_modules\/(react|react-dom|scheduler|@tanstack|i18next|react-i18next|use-sync-external-store)\//;

const WAYS = { '.br': promisify(brotliCompress), '.gz': promisify(gzip) } as const;
/** Typefaces are compressed already. */
const isText = (name: string): boolean => /\.(js|css|html|svg)$/.test(name);

/** Lays a compressed twin beside each file, so that the server need not compress while it serves. */
const compressedTwins: Plugin = {
  name: 'compressed-twins',
  apply: 'build',
  async closeBundle() {
    for (const name of await readdir(OUT, { recursive: true })) {
      if (!isText(name)) continue;
      const content = await readFile(`${OUT}/${name}`);
      for (const [ending, compress] of Object.entries(WAYS)) {
        await writeFile(`${OUT}/${name}${ending}`, await compress(content));
      }
    }
  },
};

/** The client is built to `dist/app`, which the server hands out; while developing, `/api` goes to a running server. */
export default defineConfig({
  root: here('.'),
  plugins: [react(), compressedTwins],
  resolve: {
    alias: [{ find: /^@clampwright\/core\/(.+)$/, replacement: here('../core/$1/index.ts') }],
  },
  build: {
    outDir: OUT,
    emptyOutDir: true,
    target: 'es2022',
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: 'frame', test: FRAME }] } } },
  },
  // The server refuses what comes from a foreign origin, so the host that the browser asked for is handed on.
  server: {
    proxy: { '/api': { target: process.env['CLAMPWRIGHT_URL'] ?? 'http://127.0.0.1:4700', changeOrigin: false } },
  },
});
