import { createServer, type Server } from 'node:http';
import { failed, ok, type Result } from '@clampwright/core/failure';
import { getRequestListener } from '@hono/node-server';

/** A file of a million lines takes longer than the five minutes that Node allows a request by default. */
const REQUEST_TIMEOUT_MS = 3_600_000;

/** Listens at a port of this machine; 0 is any free one. */
export async function listen(
  fetch: (request: Request) => Response | Promise<Response>,
  host: string,
  port: number,
): Promise<Result<{ readonly server: Server; readonly port: number }>> {
  const answer = getRequestListener(fetch, { hostname: host });
  const server = createServer(
    { requestTimeout: REQUEST_TIMEOUT_MS },
    (asked, answered) => void answer(asked, answered),
  );
  const error = await new Promise<NodeJS.ErrnoException | undefined>((resolve) => {
    server.once('error', resolve);
    server.listen(port, host.replaceAll(/[[\]]/g, ''), () => resolve(undefined));
  });
  if (error) return refused(error, host, port);
  const address = server.address();
  if (address === null || typeof address === 'string')
    throw new Error('a port was asked for, another kind of address came');
  return ok({ server, port: address.port });
}

const REMEDIES: Readonly<Record<string, readonly [why: string, remedy: string]>> = {
  EADDRINUSE: ['is taken by another program', 'End that program, or choose another port with --port.'],
  EACCES: ['may not be used by this account', 'Choose a port from 1024 up with --port.'],
};

function refused(error: NodeJS.ErrnoException, host: string, port: number): Result<never> {
  const [why, remedy] = REMEDIES[error.code ?? ''] ?? [
    `cannot be opened (${error.message})`,
    'Choose another port with --port.',
  ];
  return failed({ kind: 'unavailable', message: `Port ${port} of ${host} ${why}.`, remedy });
}

/** What is being answered may be finished for so long. */
const GRACE_MS = 2000;
const LOOK_EVERY_MS = 20;

/** Takes nothing new, lets what is under way be answered, then gives the port back. */
export async function stopListening(server: Server): Promise<void> {
  const idle = setInterval(() => server.closeIdleConnections(), LOOK_EVERY_MS);
  const end = setTimeout(() => server.closeAllConnections(), GRACE_MS);
  await new Promise<void>((resolve, reject) => {
    server.close((error) => (error ? reject(error) : resolve()));
  });
  clearInterval(idle);
  clearTimeout(end);
}
