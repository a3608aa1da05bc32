import type { Device, DeviceCounts } from '@clampwright/core/device';
import { parse, type Result } from '@clampwright/core/failure';
import { mappingSchema } from '@clampwright/intake/file';
import type { DeviceStanding } from '../api/contract.ts';
import { problemOf } from '../api/problem.ts';
import type { Deps } from '../deps.ts';
import { keptCounts } from './kept-counts.ts';
import { runFolder } from './run-folder.ts';
import { runOpcUa } from './run-opc-ua.ts';
import { runSerial } from './run-serial.ts';
import type { RunningDevice } from './runs.ts';
import { noCounts, type Standing, standingOf } from './standing.ts';

/** The devices at work. */
export interface DeviceRuns {
  /**
   * Begins a device, or begins it anew with what was changed.
   *
   * @param counts what it told before the server was started; of one that is at work it is known
   */
  readonly start: (device: Device, counts?: DeviceCounts) => Promise<void>;
  readonly stop: (id: string) => Promise<void>;
  readonly standing: (id: string) => Standing | undefined;
  readonly told: (id: string) => DeviceStanding;
  readonly close: () => Promise<void>;
}

interface Run {
  readonly standing: Standing;
  readonly running: Promise<RunningDevice | undefined>;
}

/** @param deps asked for when a device begins: they hold these runs themselves */
export function deviceRuns(deps: () => Deps): DeviceRuns {
  const runs = new Map<string, Run>();
  const standings = () => [...runs].map(([id, { standing }]) => [id, standing] as const);
  const kept = keptCounts(deps, standings);
  const fresh = (): DeviceCounts => noCounts(deps().now().toISOString());
  const stop = async (id: string): Promise<void> => {
    const run = runs.get(id);
    runs.delete(id);
    await (await run?.running)?.close();
  };
  return {
    start: async (device, counts) => {
      const before = runs.get(device.id)?.standing.told() ?? counts;
      await stop(device.id);
      const standing = standingOf(before ?? fresh());
      kept.begin();
      runs.set(device.id, { standing, running: begun(deps(), device, standing) });
    },
    stop,
    standing: (id) => runs.get(id)?.standing,
    told: (id) => runs.get(id)?.standing.told() ?? standingOf(fresh()).told(),
    close: async () => {
      const last = standings();
      await Promise.all([...runs.keys()].map(stop));
      await kept.end(last);
    },
  };
}

async function begun(deps: Deps, device: Device, standing: Standing): Promise<RunningDevice | undefined> {
  const { way } = device;
  switch (way.kind) {
    case 'serial': {
      const lines = await deps.store.lineDescriptions.get(way.lines);
      return lines.ok ? runSerial(deps, device, way, lines.value, standing) : setUpWrong(standing, lines);
    }
    case 'opc-ua':
      return runOpcUa(deps, device, way, standing);
    case 'folder': {
      const saved = await deps.store.mappings.get(way.mapping);
      const mapping = saved.ok ? parse(mappingSchema, saved.value.mapping) : saved;
      return mapping.ok ? runFolder(deps, device, way, mapping.value, standing) : setUpWrong(standing, mapping);
    }
    case 'http':
      return undefined;
  }
}

function setUpWrong(standing: Standing, result: Extract<Result<unknown>, { ok: false }>): undefined {
  standing.state('set-up-wrong', problemOf(result.failure).detail);
  return undefined;
}

/** Begins every device that is kept. */
export async function startDevices({ store, devices }: Pick<Deps, 'store' | 'devices'>): Promise<Result<unknown>> {
  const kept = await store.devices.list();
  if (!kept.ok) return kept;
  const counts = await store.devices.counts();
  if (counts.ok) for (const { device } of kept.value) await devices.start(device, counts.value.get(device.id));
  return counts;
}
