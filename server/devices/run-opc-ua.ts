import { join } from 'node:path';
import type { Device, OpcUaWay } from '@clampwright/core/device';
import type { JoiningSystemEvent } from '@clampwright/intake/opc-ua';
import type { Deps } from '../deps.ts';
import { inboxOf } from './inbox.ts';
import type { RunningDevice } from './runs.ts';
import type { Standing } from './standing.ts';

/** Where our certificate for OPC UA lies, with those that are trusted. */
export const certificateFolder = (dataFolder: string): string => join(dataFolder, 'opc-ua');

/** A joining system behind an OPC UA server. The library is large, so it is fetched when the first one is there. */
export async function runOpcUa(deps: Deps, device: Device, way: OpcUaWay, standing: Standing): Promise<RunningDevice> {
  const { openJoiningSystem } = await import('@clampwright/intake/opc-ua');
  const inbox = inboxOf(deps, device, standing, () => undefined);
  const tell = (event: JoiningSystemEvent): void => {
    switch (event.kind) {
      case 'connected':
        return standing.state('connected', event.systems.join(', '));
      case 'lost':
        return standing.state('lost', event.detail, event.certificate);
      case 'unreadable':
        standing.heard(event.raw, deps.now().toISOString());
        standing.count('unreadable');
        return standing.fault({ kind: 'other', message: event.message });
    }
  };
  const client = openJoiningSystem(
    way,
    {
      tell,
      take: async (pull, raw) => {
        standing.heard(raw, deps.now().toISOString());
        return (await inbox.put(pull)).state !== 'refused';
      },
    },
    { folder: certificateFolder(deps.dataFolder) },
  );
  return {
    standing: standing.told,
    close: async () => {
      await client.close();
      await inbox.empty();
    },
  };
}
