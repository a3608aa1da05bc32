import { Hono } from 'hono';
import { API_ROOT } from './api/document.ts';
import { problemResponse } from './api/problem.ts';
import { ROUTES } from './api/routes.ts';
import { clientFiles } from './client/files.ts';
import type { Deps } from './deps.ts';
import { safeHeaders } from './guard/headers.ts';
import { localOnly } from './guard/local.ts';

const BROKEN =
  'Something broke here; what was acknowledged before is kept. Try again, and look into the log if it stays so.';

/**
 * The whole server as a function from request to response, listening nowhere yet.
 *
 * @param webFolder where the built client lies; left out: the API alone
 */
export function createApp(deps: Deps, webFolder?: string): Hono {
  const app = new Hono();
  app.use(safeHeaders, localOnly);
  app.onError((error, c) => {
    deps.logger.error({ err: error, method: c.req.method, path: c.req.path }, 'request broke');
    return problemResponse({ kind: 'broken', message: BROKEN });
  });
  for (const { method, path, answer } of ROUTES) {
    app.on(method, API_ROOT + path.replaceAll(/\{(\w+)\}/g, ':$1'), (c) => answer(c, deps));
  }
  app.all('/api/*', (c) => problemResponse({ kind: 'not-found', what: 'route', id: `${c.req.method} ${c.req.path}` }));
  if (webFolder !== undefined) app.route('/', clientFiles(webFolder));
  return app;
}
