import { hash } from 'node:crypto';
import type { OpcUaWay } from '@clampwright/core/device';
import type { OPCUAClient as Client, ClientSession, EndpointDescription, UserIdentityInfo } from 'node-opcua-client';
import { MessageSecurityMode, OPCUACertificateManager, OPCUAClient, SecurityPolicy, UserTokenType } from './library.ts';

/** Why a server was not connected to; `certificate`: it shows one that nobody has trusted yet. */
export interface NotConnected {
  readonly detail: string;
  readonly certificate?: string;
}

type Outcome<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly why: NotConnected };
type Certificates = InstanceType<typeof OPCUACertificateManager>;

/** A connection with its session. */
export interface Connected {
  readonly client: Client;
  readonly session: ClientSession;
}

const TIMEOUT_MS = 10_000;
/** How often the server is asked whether it is still there, ms. */
const KEEP_ALIVE_MS = 5000;

/**
 * Connects to a server and opens a session. With security, the server must show the certificate that was trusted by
 * hand; our own lies in the folder and is made when it is first wanted.
 *
 * @param folder  where our certificate, its key and the trusted ones lie; readable by this account alone
 * @param closing breaks the attempt off, so that nobody waits for a server that does not answer
 */
export async function connect(settings: OpcUaWay, folder: string, closing: AbortSignal): Promise<Outcome<Connected>> {
  const certificates = new OPCUACertificateManager({ rootFolder: folder });
  try {
    await certificates.initialize();
    const trusted = await trustShown(settings, certificates, closing);
    return trusted.ok ? await sessionAt(settings, certificates, closing) : trusted;
  } catch (error) {
    return { ok: false, why: { detail: error instanceof Error ? error.message : String(error) } };
  } finally {
    await certificates.dispose();
  }
}

async function sessionAt(
  settings: OpcUaWay,
  certificates: Certificates,
  closing: AbortSignal,
): Promise<Outcome<Connected>> {
  const client = clientWith(certificates, settings);
  try {
    await reach(client, settings, closing);
    const session = await client.createSession(identityOf(settings));
    return { ok: true, value: { client, session } };
  } catch (error) {
    await client.disconnect();
    throw error;
  }
}

/** Fails at once when it is to be ended: the library itself would wait for the answer until its time is over. */
async function reach(client: Client, { endpointUrl }: OpcUaWay, closing: AbortSignal): Promise<void> {
  const over = new AbortController();
  const ended = new Promise<never>((_, fail) => {
    const end = (): void => fail(new Error('ended'));
    closing.addEventListener('abort', end, { signal: over.signal });
    if (closing.aborted) end();
  });
  try {
    await Promise.race([client.connect(endpointUrl), ended]);
  } finally {
    over.abort();
  }
}

function clientWith(
  certificates: Certificates,
  { securityMode, securityPolicy }: Pick<OpcUaWay, 'securityMode' | 'securityPolicy'>,
): Client {
  return OPCUAClient.create({
    applicationName: 'Clampwright',
    clientCertificateManager: certificates,
    // Behind a router or in a container a server tells an address of its own that cannot be reached from here.
    endpointMustExist: false,
    securityMode: MessageSecurityMode[securityMode],
    securityPolicy: SecurityPolicy[securityPolicy],
    // Broken connections are taken up again by us, with growing pauses and a look for what was missed.
    connectionStrategy: { maxRetry: 0 },
    keepSessionAlive: true,
    keepAliveInterval: KEEP_ALIVE_MS,
    transportTimeout: TIMEOUT_MS,
    defaultTransactionTimeout: TIMEOUT_MS,
  });
}

function identityOf({ userName, password = '' }: OpcUaWay): UserIdentityInfo {
  return userName === undefined
    ? { type: UserTokenType.Anonymous }
    : { type: UserTokenType.UserName, userName, password };
}

/** Trusts the certificate that the server shows if it is the one that was trusted by hand. */
async function trustShown(
  settings: OpcUaWay,
  certificates: Certificates,
  closing: AbortSignal,
): Promise<Outcome<undefined>> {
  if (settings.securityMode === 'None') return { ok: true, value: undefined };
  const endpoint = await endpointOf(settings, certificates, closing);
  if (!endpoint) {
    const detail = `The server does not offer ${settings.securityMode} with ${settings.securityPolicy}.`;
    return { ok: false, why: { detail } };
  }
  const certificate = hash('sha256', endpoint.serverCertificate);
  if (certificate !== settings.trustedCertificate)
    return { ok: false, why: { detail: untrusted(settings), certificate } };
  await certificates.trustCertificate(endpoint.serverCertificate);
  return { ok: true, value: undefined };
}

const untrusted = ({ trustedCertificate }: OpcUaWay): string =>
  trustedCertificate === undefined
    ? 'The certificate of the server is not trusted yet. Compare its fingerprint with the one at the server, then trust it.'
    : 'The server shows another certificate than the one that was trusted. Find out why before you trust it.';

async function endpointOf(
  settings: OpcUaWay,
  certificates: Certificates,
  closing: AbortSignal,
): Promise<EndpointDescription | undefined> {
  const client = clientWith(certificates, { securityMode: 'None', securityPolicy: 'None' });
  try {
    await reach(client, settings, closing);
    const endpoints = await client.getEndpoints({ endpointUrl: settings.endpointUrl });
    return endpoints.find(
      ({ securityMode, securityPolicyUri }) =>
        securityMode === MessageSecurityMode[settings.securityMode] &&
        securityPolicyUri === SecurityPolicy[settings.securityPolicy],
    );
  } finally {
    await client.disconnect();
  }
}
