import { hash } from 'node:crypto';
import { join } from 'node:path';
import certificates from 'node-opcua-certificate-manager';
import nodeSets from 'node-opcua-nodesets';
import library from 'node-opcua-server';
import { addResultEvent } from './result-event.ts';
import { addTestSystem, type TestSystem } from './test-system.ts';

/*
 * Joining systems of the invented workshop behind a real OPC UA server with the published information models
 * (OPC 40450-1 and 40451-1, on OPC 40001-101, 40001-1, 10000-200, 10000-110 and 10000-100). For tests.
 */

const { nodesets } = nodeSets;
/** Each one after those that it is built on. */
const MODELS = [
  nodesets.standard,
  nodesets.di,
  nodesets.amb,
  nodesets.ia,
  nodesets.machinery,
  nodesets.machineryResult,
  nodesets.ijtBase,
  nodesets.tightening,
];

export const USER = { userName: 'clampwright', password: 'valley-3' } as const;

export interface JoiningServer {
  readonly port: number;
  /** SHA-256 of its certificate. */
  readonly certificate: string;
  /** Counts acknowledgements; sends unacknowledged results again when asked. */
  readonly station: TestSystem;
  /** Gives lists of results and results by their identities. */
  readonly handheld: TestSystem;
  readonly close: () => Promise<void>;
}

export async function startJoiningServer(folder: string): Promise<JoiningServer> {
  const serverCertificateManager = new certificates.OPCUACertificateManager({
    rootFolder: join(folder, 'server'),
    automaticallyAcceptUnknownCertificate: true,
  });
  const server = new library.OPCUAServer({
    port: 0,
    hostname: '127.0.0.1',
    nodeset_filename: MODELS,
    serverCertificateManager,
    userManager: {
      isValidUser: (userName: string, password: string) => userName === USER.userName && password === USER.password,
    },
  });
  await server.initialize();
  const { addressSpace } = server.engine;
  if (!addressSpace) throw new Error('a server that was initialized has an address space');
  const event = addResultEvent(addressSpace);
  const station = addTestSystem(addressSpace, 'Station', 'acknowledging', event);
  const handheld = addTestSystem(addressSpace, 'Handheld', 'listing', event);
  await server.start();
  const port = server.endpoints[0]?.port;
  if (port === undefined) throw new Error('a server that was started has an endpoint');
  return {
    port,
    certificate: hash('sha256', server.getCertificate()),
    station,
    handheld,
    close: () => server.shutdown(0),
  };
}
