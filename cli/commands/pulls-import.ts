import { randomBytes } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import path from 'node:path';
import { invalid, ok, type Result } from '@clampwright/core/failure';
import { type FileTaken, type FileTaking, type Outcome, takeFile } from '@clampwright/server';
import type { Store } from '@clampwright/store';
import { dataFolder } from '../data-folder.ts';
import { importReport } from '../import-report.ts';
import { mappingNamed } from '../mapping-named.ts';
import { withStore } from '../open.ts';
import { personNamed } from '../person-named.ts';
import { progress } from '../progress.ts';
import { answer, type ExitCode, remark, toJson } from '../say.ts';

interface Wanted {
  readonly job: string;
  readonly mapping: string;
  readonly as: string;
  readonly joint?: string;
  readonly mode: FileTaking['mode'];
  readonly data?: string;
  readonly json?: true;
}

/** `clampwright pulls import FILE`: exit code 0 when all went in, 1 when lines were refused. */
export async function importPulls(file: string, wanted: Wanted): Promise<Outcome<ExitCode>> {
  const taken = await withStore(dataFolder(wanted.data), (store) => take(store, file, wanted));
  if (!taken.ok) return taken;
  const { result } = taken.value;
  const { said, remarks } = importReport(result, wanted.mode);
  answer(wanted.json ? toJson(result) : said);
  for (const text of remarks) remark(text);
  return ok(result.refusedCount > 0 ? 1 : 0);
}

async function take(store: Store, file: string, wanted: Wanted): Promise<Outcome<FileTaken>> {
  const mapping = await mappingNamed(store, wanted.mapping);
  if (!mapping.ok) return mapping;
  const by = await personNamed(store, wanted.as);
  if (!by.ok) return by;
  const size = await sizeOf(file);
  if (!size.ok) return size;
  const { job: jobId, joint: jointRef, mode } = wanted;
  return takeFile(
    { store, now: () => new Date(), random: (count) => randomBytes(count) },
    {
      jobId,
      jointRef,
      mode,
      by: by.value,
      mapping: mapping.value,
      bytes: progress(createReadStream(file), size.value),
      fileName: path.basename(file),
    },
  );
}

async function sizeOf(file: string): Promise<Result<number>> {
  try {
    const found = await stat(file);
    return found.isFile() ? ok(found.size) : invalid('file', `${file} is not a file`, 'a CSV file');
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return invalid('file', `${file} cannot be read: ${why}`, 'a CSV file');
  }
}
