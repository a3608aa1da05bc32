import { failed, ok, type Result } from '@clampwright/core/failure';
import { createAdaptorServer, type ServerType } from '@hono/node-server';

/** A file of a million lines takes longer than the five minutes that Node allows a request by default. */
const REQUEST_TIMEOUT_MS = 3_600_000;

/** Listens at a port of this machine; 0 is any free one. */
export async function listen(
  fetch: (request: Request) => Response | Promise<Response>,
  host: string,
  port: number,
): Promise<Result<{ readonly server: ServerType; readonly port: number }>> {
  const server = createAdaptorServer({ fetch, hostname: host, serverOptions: { requestTimeout: REQUEST_TIMEOUT_MS } });
  const error = await new Promise<NodeJS.ErrnoException | undefined>((resolve) => {
    server.once('error', resolve);
    server.listen(port, host, () => resolve(undefined));
  });
  if (error) return refused(error, host, port);
  const address = server.address();
  if (address === null || typeof address === 'string')
    throw new Error('a port was asked for, another kind of address came');
  return ok({ server, port: address.port });
}

function refused(error: NodeJS.ErrnoException, host: string, port: number): Result<never> {
  if (error.code === 'EADDRINUSE') {
    return failed({
      kind: 'unavailable',
      message: `Port ${port} of ${host} is taken by another program.`,
      remedy: 'End that program, or choose another port with --port.',
    });
  }
  if (error.code === 'EACCES') {
    return failed({
      kind: 'unavailable',
      message: `Port ${port} of ${host} may not be used by this account.`,
      remedy: 'Choose a port from 1024 up with --port.',
    });
  }
  throw error;
}

/** Answers no more: ends what is open, then the port. */
export const stopListening = (server: ServerType): Promise<void> =>
  new Promise((resolve, reject) => {
    server.close((error) => (error ? reject(error) : resolve()));
    if ('closeAllConnections' in server) server.closeAllConnections();
  });
