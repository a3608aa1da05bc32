import { canonical } from './canonical.ts';
import { sha256Hex } from './digest.ts';

/** Every leaf of a value under its JSON Pointer (RFC 6901). Empty arrays and objects are leaves too. */
export function leavesOf(value: unknown, pointer = ''): readonly (readonly [pointer: string, leaf: unknown])[] {
  if (typeof value !== 'object' || value === null) return [[pointer, value]];
  const members = Object.entries(value).filter(([, member]) => member !== undefined);
  if (members.length === 0) return [[pointer, value]];
  return members.flatMap(([name, member]) =>
    leavesOf(member, `${pointer}/${name.replaceAll('~', '~0').replaceAll('/', '~1')}`),
  );
}

const SHORT = 8;

/** A short digest of each leaf, so that a change can be told to the field. The chain proves; these only locate. */
export function fingerprintsOf(value: unknown): Record<string, string> {
  return Object.fromEntries(
    leavesOf(value).map(([pointer, leaf]) => [pointer, sha256Hex(pointer + canonical(leaf)).slice(0, SHORT)]),
  );
}

/** The pointers at which a value no longer fits its fingerprints: changed, added, or missing. */
export function changedLeaves(value: unknown, fingerprints: Readonly<Record<string, string>>): readonly string[] {
  const now = fingerprintsOf(value);
  const pointers = new Set([...Object.keys(now), ...Object.keys(fingerprints)]);
  return [...pointers].filter((pointer) => now[pointer] !== fingerprints[pointer]).toSorted();
}

/** The leaf at a pointer, or undefined. */
export function leafAt(value: unknown, pointer: string): unknown {
  return leavesOf(value).find(([candidate]) => candidate === pointer)?.[1];
}
