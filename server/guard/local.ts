import type { MiddlewareHandler } from 'hono';
import { problemResponse } from '../api/problem.ts';

const LOCAL_HOSTS: readonly string[] = ['127.0.0.1', 'localhost', '[::1]'];

/** Whether somebody may be served under this name: only this machine's own, or a page elsewhere could borrow it. */
export const isLocalHost = (hostname: string): boolean => LOCAL_HOSTS.includes(hostname);

const hostnameOf = (host: string): string => host.replace(/:\d+$/, '');

function whyForeign(request: Request): string | undefined {
  const url = new URL(request.url);
  const host = request.headers.get('host') ?? url.host;
  if (!isLocalHost(url.hostname) || !isLocalHost(hostnameOf(host))) return `It serves this machine only, not ${host}.`;
  const origin = request.headers.get('origin');
  if (origin !== null && origin !== `http://${host}`) return `It answers its own pages only, not those of ${origin}.`;
  return undefined;
}

/** Refuses names that are not this machine's (DNS rebinding) and requests that another page sends (CSRF). */
export const localOnly: MiddlewareHandler = async (c, next) => {
  const reason = whyForeign(c.req.raw);
  if (reason !== undefined) return problemResponse({ kind: 'foreign-origin', message: reason });
  return next();
};
