import { existsSync } from 'node:fs';
import { invalid, parse, type Result } from '@clampwright/core/failure';
import { type Mapping, mappingSchema } from '@clampwright/intake/file';
import type { Store } from '@clampwright/store';
import { readBytes, readJson } from './input.ts';

const FIELD = '--mapping';
const WANTED = 'a mapping as JSON, see docs/files-in.md';

/** A mapping saved by name, or one in a JSON file. */
export async function mappingNamed({ mappings }: Pick<Store, 'mappings'>, name: string): Promise<Result<Mapping>> {
  const saved = await mappings.get(name);
  if (saved.ok) return parse(mappingSchema, saved.value.mapping);
  if (saved.failure.kind !== 'not-found') return saved;
  if (existsSync(name)) return mappingIn(name);
  const known = await mappings.list();
  if (!known.ok) return known;
  const names = known.value.map((mapping) => mapping.name);
  return invalid(
    FIELD,
    `there is no mapping ${name}, neither saved nor as a file`,
    names.length > 0 ? `a JSON file, or one of ${names.join(', ')}` : 'a JSON file; no mapping is saved yet',
  );
}

function mappingIn(file: string): Result<Mapping> {
  const bytes = readBytes(file, FIELD, WANTED);
  if (!bytes.ok) return bytes;
  const json = readJson(bytes.value.toString('utf8'), `${FIELD} ${file}`, WANTED);
  if (!json.ok) return json;
  const mapping = parse(mappingSchema, json.value);
  if (mapping.ok || mapping.failure.kind !== 'invalid') return mapping;
  const { field, message, expected } = mapping.failure;
  return invalid(`${FIELD} ${file}, ${field}`, message, expected);
}
