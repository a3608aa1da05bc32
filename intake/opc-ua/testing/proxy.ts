import { connect as connectTo, createServer, type Socket } from 'node:net';

/** A wire between client and server that can be cut. */
export interface Wire {
  readonly port: number;
  /** Drops every connection, as a pulled cable does, and lets none in until it is mended. */
  readonly cut: () => void;
  readonly mend: () => void;
  readonly close: () => Promise<void>;
}

export async function wireTo(targetPort: number): Promise<Wire> {
  const sockets = new Set<Socket>();
  let isCut = false;
  const keep = (socket: Socket): void => {
    sockets.add(socket);
    socket.on('close', () => sockets.delete(socket));
    socket.on('error', () => socket.destroy());
  };
  const drop = (): void => {
    for (const socket of sockets) socket.destroy();
  };
  const server = createServer((near) => {
    if (isCut) return void near.destroy();
    const far = connectTo(targetPort, '127.0.0.1');
    keep(near);
    keep(far);
    near.pipe(far).pipe(near);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('a wire has a port');
  return {
    port: address.port,
    cut: () => {
      isCut = true;
      drop();
    },
    mend: () => {
      isCut = false;
    },
    close: () => {
      drop();
      return new Promise((resolve) => server.close(() => resolve()));
    },
  };
}
