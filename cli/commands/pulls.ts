import { randomBytes } from 'node:crypto';
import { createReadStream, readFileSync } from 'node:fs';
import { stat } from 'node:fs/promises';
import path from 'node:path';
import { failed, invalid, ok, parse, type Result } from '@clampwright/core/failure';
import { type Mapping, mappingSchema } from '@clampwright/intake/file';
import { takeFile } from '@clampwright/server';
import type { Person, Store } from '@clampwright/store';
import { openStore } from '@clampwright/store';
import { readJsonText } from '../input.ts';
import { dataFolder } from '../open.ts';
import { progress } from '../progress.ts';
import { endWith } from '../say.ts';

const MODES = ['preview', 'all-or-nothing', 'good-lines'] as const;

const NOT_A_WORKER = { kind: 'forbidden', action: 'taking pulls into a job', needs: 'technician' } as const;

interface Wanted {
  readonly job: string;
  readonly mapping: string;
  readonly as: string;
  readonly joint?: string;
  readonly mode: string;
  readonly data?: string;
}

/** `clampwright pulls import FILE`: exit code 0 when all went in, 1 when lines were refused. */
export async function importPulls(file: string, wanted: Wanted): Promise<void> {
  const store = await openStore(dataFolder(wanted.data));
  if (!store.ok) return endWith(store.failure);
  const taken = await take(store.value, file, wanted);
  await store.value.close();
  if (!taken.ok) return refuse(taken.failure);
  const { result } = taken.value;
  for (const { line, field, message } of result.refused) process.stderr.write(`line ${line}, ${field}: ${message}\n`);
  const more = result.refusedCount - result.refused.length;
  if (more > 0) process.stderr.write(`… and ${more} more lines\n`);
  process.stdout.write(`${JSON.stringify({ ...result, refused: undefined, preview: undefined }, null, 2)}\n`);
  if (!result.kept)
    process.stdout.write(
      wanted.mode === 'preview'
        ? 'A preview: nothing was kept.\n'
        : 'Nothing was kept: mend the lines above, or use --mode good-lines.\n',
    );
  process.exitCode = result.refusedCount > 0 ? 1 : 0;
}

type Refusal = Extract<Awaited<ReturnType<typeof takeFile>>, { ok: false }>['failure'];

/** What only a person at a screen can be told comes with a message of its own. */
function refuse(failure: Refusal): never {
  switch (failure.kind) {
    case 'invalid':
    case 'not-found':
    case 'conflict':
    case 'forbidden':
    case 'unavailable':
      return endWith(failure);
    default:
      process.stderr.write(`${failure.message}\n`);
      return process.exit(1);
  }
}

async function take(store: Store, file: string, wanted: Wanted): ReturnType<typeof takeFile> {
  const mode = MODES.find((known) => known === wanted.mode);
  if (!mode) return invalid('--mode', `there is no mode ${wanted.mode}`, MODES.join(', '));
  const mapping = await mappingNamed(store, wanted.mapping);
  if (!mapping.ok) return mapping;
  const by = await personNamed(store, wanted.as);
  if (!by.ok) return by;
  const size = await sizeOf(file);
  if (!size.ok) return size;
  return takeFile(
    { store, now: () => new Date(), random: (count) => randomBytes(count) },
    {
      jobId: wanted.job,
      bytes: progress(createReadStream(file), size.value),
      mapping: mapping.value,
      mode,
      jointRef: wanted.joint,
      fileName: path.basename(file),
      by: by.value,
    },
  );
}

async function sizeOf(file: string): Promise<Result<number>> {
  try {
    const found = await stat(file);
    return found.isFile() ? ok(found.size) : invalid('file', `${file} is not a file`, 'a CSV file');
  } catch (error) {
    return invalid(
      'file',
      `${file} cannot be read: ${error instanceof Error ? error.message : String(error)}`,
      'a CSV file',
    );
  }
}

/** A mapping saved by name, or one in a JSON file. */
async function mappingNamed(store: Store, name: string): Promise<Result<Mapping>> {
  const saved = await store.mappings.get(name);
  if (saved.ok) return parse(mappingSchema, saved.value.mapping);
  try {
    const read = readJsonText(readFileSync(name, 'utf8'));
    return read.ok ? parse(mappingSchema, read.value) : read;
  } catch {
    const known = await store.mappings.list();
    const names = known.ok ? known.value.map((mapping) => mapping.name).join(', ') : '';
    return invalid(
      '--mapping',
      `there is no mapping ${name}, neither saved nor as a file`,
      names || 'a JSON file; none is saved yet',
    );
  }
}

async function personNamed(store: Store, name: string): Promise<Result<Person>> {
  const people = await store.people.list();
  if (!people.ok) return people;
  const found = people.value.filter((person) => person.id === name || person.name === name);
  const [person] = found;
  if (found.length > 1) return invalid('--as', `${found.length} people are called ${name}`, 'the id of one of them');
  if (!person)
    return invalid(
      '--as',
      `there is nobody called ${name}`,
      people.value.map((candidate) => candidate.name).join(', '),
    );
  if (person.role === 'technician' || person.role === 'lead') return ok(person);
  return failed(NOT_A_WORKER);
}
