import { createReadStream } from 'node:fs';
import { mkdir, readdir, rename, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import type { Device, WayIn } from '@clampwright/core/device';
import { failed, ok, type Result } from '@clampwright/core/failure';
import type { Mapping } from '@clampwright/intake/file';
import type { ImportResult } from '../api/contract.ts';
import { type Outcome, problemOf } from '../api/problem.ts';
import type { Deps } from '../deps.ts';
import { takeFile } from '../imports/take-file.ts';
import type { RunningDevice } from './runs.ts';
import type { Standing } from './standing.ts';

const LOOK_EVERY_MS = 1000;
export const TAKEN = 'taken';
export const REFUSED = 'refused';

type FolderWay = Extract<WayIn, { kind: 'folder' }>;

/**
 * Watches a folder. Each file is taken once, whole or not at all, and then moved: into `taken`, or into `refused` with
 * a text beside it that says why. A file is left until its size stands still, so that none is taken half written.
 */
export function runFolder(
  deps: Deps,
  device: Device,
  way: FolderWay,
  mapping: Mapping,
  standing: Standing,
): RunningDevice {
  const closing = new AbortController();
  const sizes = new Map<string, number>();
  const live = async (): Promise<void> => {
    while (!closing.signal.aborted) {
      await look(deps, device, way, mapping, standing, sizes);
      await setTimeout(LOOK_EVERY_MS, undefined, { signal: closing.signal }).catch(() => undefined);
    }
  };
  const lived = live();
  return {
    standing: standing.told,
    close: async () => {
      closing.abort();
      await lived;
    },
  };
}

async function look(
  deps: Deps,
  device: Device,
  way: FolderWay,
  mapping: Mapping,
  standing: Standing,
  sizes: Map<string, number>,
): Promise<void> {
  try {
    for (const sub of [TAKEN, REFUSED]) await mkdir(join(way.path, sub), { recursive: true });
    standing.state('connected');
    for (const name of await settledFiles(way.path, sizes))
      await takeOne(deps, device, way.path, name, mapping, standing);
  } catch (error) {
    const detail = error instanceof Error ? error.message : String(error);
    standing.state('lost', detail);
  }
}

/** Files whose size is the same as when they were looked at before. */
async function settledFiles(folder: string, sizes: Map<string, number>): Promise<readonly string[]> {
  const entries = await readdir(folder, { withFileTypes: true });
  const names = entries.filter((entry) => entry.isFile() && !entry.name.startsWith('.')).map(({ name }) => name);
  for (const gone of [...sizes.keys()].filter((name) => !names.includes(name))) sizes.delete(gone);
  const settled: string[] = [];
  for (const name of names.toSorted()) {
    const { size } = await stat(join(folder, name));
    if (sizes.get(name) === size) settled.push(name);
    sizes.set(name, size);
  }
  return settled;
}

async function takeOne(
  deps: Deps,
  device: Device,
  folder: string,
  name: string,
  mapping: Mapping,
  standing: Standing,
): Promise<void> {
  standing.heard(name, deps.now().toISOString());
  const taken = device.wrenchId === undefined ? undefined : deps.ports.inHand(device.wrenchId);
  if (!taken) {
    // Nothing is wrong with the file: it waits until somebody takes the wrench.
    standing.fault({ kind: 'pull', message: `${name} waits: its wrench is not taken for any open job.` });
    return;
  }
  const read = await takeFile(deps, {
    jobId: taken.jobId,
    bytes: createReadStream(join(folder, name)),
    mapping,
    mode: 'all-or-nothing',
    jointRef: taken.jointRef,
    fileName: name,
    by: taken.by,
  });
  const result = read.ok ? whole(read.value.result) : read;
  if (!result.ok) return setAside(folder, name, problemOf(result.failure).detail, standing);
  if (read.ok && read.value.afterSeq !== undefined)
    deps.listeners.tell(taken.jobId, { kind: 'entries', afterSeq: read.value.afterSeq });
  await rename(join(folder, name), await freeName(join(folder, TAKEN), name));
  standing.count('taken', result.value.added);
  standing.count('already', result.value.already);
}

/** One refused line keeps the whole file out. */
function whole(result: ImportResult): Outcome<ImportResult> {
  if (result.kept && result.pulls > 0) return ok(result);
  const lines = result.refused.map(({ line, field, message }) => `line ${line}, ${field}: ${message}`);
  const message = lines.length > 0 ? lines.join('\n') : 'The file holds no pull.';
  return failed({ kind: 'conflict', message, current: null });
}

async function setAside(folder: string, name: string, reason: string, standing: Standing): Promise<void> {
  const path = await freeName(join(folder, REFUSED), name);
  await rename(join(folder, name), path);
  await writeFile(`${path}.reason.txt`, `${reason}\n`);
  standing.count('unreadable');
  standing.fault({ kind: 'other', message: `${name}: ${reason.split('\n')[0]}` });
}

/** A name that is free: a second file of the same name takes nothing from the first. */
async function freeName(folder: string, name: string): Promise<string> {
  const there = new Set(await readdir(folder));
  for (let number = 1; ; number++) {
    const candidate = number === 1 ? name : `${number}-${name}`;
    if (!there.has(candidate)) return join(folder, candidate);
  }
}

/** The folder must be one that is there. */
export async function folderIsThere({ path }: FolderWay): Promise<Result<undefined>> {
  const found = await stat(path).catch(() => undefined);
  if (found?.isDirectory()) return ok(undefined);
  const remedy = 'Make it, or write another path; it must be on this machine.';
  return failed({ kind: 'unavailable', message: `There is no folder ${path}.`, remedy });
}
