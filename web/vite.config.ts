import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** The client is built to `dist/app`, which the server hands out; while developing, `/api` goes to a running server. */
export default defineConfig({
  root: here('.'),
  plugins: [react()],
  resolve: {
    alias: [{ find: /^@clampwright\/core\/(.+)$/, replacement: here('../core/$1/index.ts') }],
  },
  build: { outDir: here('dist/app'), emptyOutDir: true, target: 'es2022' },
  // The server refuses what comes from a foreign origin, so the host that the browser asked for is handed on.
  server: {
    proxy: { '/api': { target: process.env['CLAMPWRIGHT_URL'] ?? 'http://127.0.0.1:4700', changeOrigin: false } },
  },
});
