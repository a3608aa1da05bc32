/**
 * Canonical JSON: one text for one value, so that a digest means something.
 * Members that are `undefined` are left out, as JSON has no such value.
 *
 * @throws RangeError on a number that is not finite or a lone surrogate: both would be a bug at the caller's
 * @source RFC 8785 (JSON Canonicalization Scheme), 3.2: ECMAScript number and string forms, members sorted by UTF-16 code units
 */
export function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map((item) => canonical(item ?? null)).join(',')}]`;
  if (typeof value === 'object' && value !== null) return canonicalObject(value);
  return canonicalLeaf(value);
}

function canonicalObject(value: object): string {
  const members: string[] = [];
  const byName = Object.entries(value).toSorted(([a], [b]) => (a < b ? -1 : 1));
  for (const [name, member] of byName) {
    if (member !== undefined) members.push(`${canonicalLeaf(name)}:${canonical(member)}`);
  }
  return `{${members.join(',')}}`;
}

function canonicalLeaf(value: unknown): string {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new RangeError('a number in a record is finite');
  if (typeof value === 'string' && LONE_SURROGATE.test(value))
    throw new RangeError('a text in a record is valid Unicode');
  const text = JSON.stringify(value);
  if (text === undefined) throw new RangeError(`a ${typeof value} has no place in a record`);
  return text;
}

const LONE_SURROGATE = /\p{Surrogate}/u;
