import type { Encoding } from './mapping.ts';

/** Turns pieces of bytes into pieces of text; what cannot be read becomes U+FFFD. */
export interface Decoder {
  readonly push: (bytes: Uint8Array) => string;
  readonly end: () => string;
}

export function decoderOf(encoding: Encoding): Decoder {
  if (encoding === 'windows-1252') return { push: windows1252, end: () => '' };
  const decoder = new TextDecoder(encoding, { ignoreBOM: true });
  return { push: (bytes) => decoder.decode(bytes, { stream: true }), end: () => decoder.decode() };
}

// WHATWG Encoding Standard, index windows-1252, 0x80 to 0x9F (*from memory*); the five gaps stay control characters.
const UPPER =
  '\u20ac\u0081\u201a\u0192\u201e\u2026\u2020\u2021\u02c6\u2030\u0160\u2039\u0152\u008d\u017d\u008f' +
  '\u0090\u2018\u2019\u201c\u201d\u2022\u2013\u2014\u02dc\u2122\u0161\u203a\u0153\u009d\u017e\u0178';

/** By hand: TextDecoder of Node 20 takes windows-1252 for ISO 8859-1 (seen with 20.20.2), which loses the euro sign and quotes. */
function windows1252(bytes: Uint8Array): string {
  const latin1 = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1');
  return latin1.replaceAll(/[\x80-\x9f]/g, (char) => UPPER[char.charCodeAt(0) - 0x80] ?? char);
}
