import { canonical } from './canonical.ts';
import { type Sha256, sha256Hex } from './digest.ts';

type Leaf = readonly [pointer: string, leaf: unknown];

/** Every leaf of a value under its JSON Pointer (RFC 6901). Empty arrays and objects are leaves too. */
export function leavesOf(value: unknown): readonly Leaf[] {
  const leaves: Leaf[] = [];
  collect(value, '', leaves);
  return leaves;
}

function collect(value: unknown, pointer: string, leaves: Leaf[]): void {
  const before = leaves.length;
  if (typeof value === 'object' && value !== null) {
    for (const [name, member] of Object.entries(value)) {
      if (member !== undefined) collect(member, `${pointer}/${escaped(name)}`, leaves);
    }
  }
  if (leaves.length === before) leaves.push([pointer, value]);
}

const escaped = (name: string): string => name.replaceAll('~', '~0').replaceAll('/', '~1');

const SHORT = 8;

/** A short digest of each leaf, so that a change can be told to the field. The chain proves; these only locate. */
export function fingerprintsOf(value: unknown, sha256: Sha256 = sha256Hex): Record<string, string> {
  const prints: Record<string, string> = {};
  for (const [pointer, leaf] of leavesOf(value)) prints[pointer] = sha256(pointer + canonical(leaf)).slice(0, SHORT);
  return prints;
}

/** The pointers at which a value no longer fits its fingerprints: changed, added, or missing. */
export function changedLeaves(
  value: unknown,
  fingerprints: Readonly<Record<string, string>>,
  sha256?: Sha256,
): readonly string[] {
  const now = fingerprintsOf(value, sha256);
  const pointers = new Set([...Object.keys(now), ...Object.keys(fingerprints)]);
  return [...pointers].filter((pointer) => now[pointer] !== fingerprints[pointer]).toSorted();
}

/** The leaf at a pointer, or undefined. */
export function leafAt(value: unknown, pointer: string): unknown {
  return leavesOf(value).find(([candidate]) => candidate === pointer)?.[1];
}
