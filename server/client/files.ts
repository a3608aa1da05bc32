import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { serveStatic } from '@hono/node-server/serve-static';
import { Hono } from 'hono';

const YEAR_S = 31_536_000;
const NOT_BUILT = 'The pages are not built yet. Run `npm run build`, then load this address again.\n';

/** The built web client. A file under `assets` carries the digest of its content in its name, so it may be kept. */
export function clientFiles(folder: string): Hono {
  const app = new Hono();
  if (!existsSync(join(folder, 'index.html'))) return app.get('*', (c) => c.text(NOT_BUILT, 503));
  app.use('*', async (c, next) => {
    await next();
    const kept = c.res.ok && c.req.path.startsWith('/assets/');
    c.header('cache-control', kept ? `public, max-age=${YEAR_S}, immutable` : 'no-cache');
  });
  app.get('*', serveStatic({ root: folder, precompressed: true }));
  // A screen's address is no file: the client itself finds the screen.
  const page = serveStatic({ root: folder, path: 'index.html', precompressed: true });
  app.get('*', (c, next) => (/\.[a-z0-9]+$/i.test(c.req.path) ? next() : page(c, next)));
  app.notFound((c) => c.text('There is no such file.\n', 404));
  return app;
}
