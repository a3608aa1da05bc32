/**
 * Canonical JSON: one text for one value, so that a digest means something.
 * Members that are `undefined` are left out, as JSON has no such value.
 *
 * @throws RangeError on a number that is not finite or a lone surrogate: both would be a bug at the caller's
 * @source RFC 8785 (JSON Canonicalization Scheme), 3.2: ECMAScript number and string forms, members sorted by UTF-16 code units
 */
export function canonical(value: unknown): string {
  switch (typeof value) {
    case 'string':
      return canonicalText(value);
    case 'number':
      if (!Number.isFinite(value)) throw new RangeError('a number in a record is finite');
      return String(value === 0 ? 0 : value);
    case 'boolean':
      return value ? 'true' : 'false';
    case 'object':
      if (!isObject(value)) return 'null';
      return Array.isArray(value) ? canonicalArray(value) : canonicalObject(value);
    default:
      throw new RangeError(`a ${typeof value} has no place in a record`);
  }
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

// A third of the time of taking in a file is spent below: plain loops, and no escaping where nothing wants it.
function canonicalArray(items: readonly unknown[]): string {
  // the samples of a trace: a tenth of the time, and one text instead of a million pieces
  if (items.every((item) => Number.isFinite(item))) return JSON.stringify(items);
  let text = '[';
  for (let i = 0; i < items.length; i++) text += `${i === 0 ? '' : ','}${canonical(items[i] ?? null)}`;
  return `${text}]`;
}

const canonicalObject = (value: Readonly<Record<string, unknown>>): string => `{${canonicalMembers(value)}}`;

/** The canonical form of an object without its braces. */
export function canonicalMembers(value: Readonly<Record<string, unknown>>): string {
  let text = '';
  for (const name of sorted(Object.keys(value))) {
    const member = value[name];
    if (member === undefined) continue;
    const lead = leadOf(name);
    text += (text === '' ? lead.slice(1) : lead) + canonical(member);
  }
  return text;
}

/** What comes before a value, with the comma of a further member. Names are few and come again: each is written once. */
const leads = new Map<string, string>();
const LEADS_KEPT = 500;

function leadOf(name: string): string {
  const known = leads.get(name);
  if (known !== undefined) return known;
  const lead = `,${canonicalText(name)}:`;
  if (leads.size < LEADS_KEPT) leads.set(name, lead);
  return lead;
}

/** Up to so many names are put in order by insertion, which takes a third of the time of the general sort. */
const FEW = 24;

/** Names in the order of their UTF-16 code units. */
function sorted(names: string[]): string[] {
  if (names.length > FEW) return names.toSorted();
  for (let i = 1; i < names.length; i++) {
    const name = names[i]!;
    let at = i;
    for (; at > 0 && names[at - 1]! > name; at--) names[at] = names[at - 1]!;
    names[at] = name;
  }
  return names;
}

/** Printable ASCII without quotation mark and backslash, which stands for itself. */
const PLAIN = /^[ !#-[\]-~]*$/;
const LONE_SURROGATE = /[\ud800-\udfff]/u;

function canonicalText(text: string): string {
  if (PLAIN.test(text)) return `"${text}"`;
  if (LONE_SURROGATE.test(text)) throw new RangeError('a text in a record is valid Unicode');
  return JSON.stringify(text);
}
