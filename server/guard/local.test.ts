import { Hono } from 'hono';
import { describe, expect, it } from 'vitest';
import { localOnly } from './local.ts';

const app = new Hono().use(localOnly).all('*', (c) => c.text('served'));

const cases: readonly (readonly [what: string, host: string, origin: string | undefined, status: number])[] = [
  ['serves its own address', '127.0.0.1:4826', undefined, 200],
  ['serves its own name', 'localhost:4826', undefined, 200],
  ['serves the address of IPv6', '[::1]:4826', undefined, 200],
  ['serves its own page', '127.0.0.1:4826', 'http://127.0.0.1:4826', 200],
  ['refuses a foreign name that points here (DNS rebinding)', 'wrenches.example:4826', undefined, 403],
  ['refuses a name that only begins like ours', '127.0.0.1.example', undefined, 403],
  ['refuses the page of another site (CSRF)', '127.0.0.1:4826', 'https://elsewhere.example', 403],
  ['refuses another program of this machine', '127.0.0.1:4826', 'http://127.0.0.1:3000', 403],
  ['refuses a page without an origin, such as a sandboxed frame', '127.0.0.1:4826', 'null', 403],
];

describe('localOnly', () => {
  it.each(cases)('%s', async (_what, host, origin, status) => {
    const headers = { host, ...(origin === undefined ? {} : { origin }) };
    const response = await app.request(`http://${host}/`, { method: 'POST', headers });
    expect(response.status).toBe(status);
  });

  it('refuses a foreign host header under a local address', async () => {
    const response = await app.request('http://127.0.0.1:4826/', { headers: { host: 'wrenches.example' } });
    expect(response.status).toBe(403);
    expect(response.headers.get('content-type')).toBe('application/problem+json');
  });
});
