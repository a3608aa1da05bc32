import type { Encoding } from './mapping.ts';

/** What an encoding was told by. */
export interface GuessedEncoding {
  readonly encoding: Encoding;
  /** Bytes of the byte order mark, to be passed over. */
  readonly markBytes: number;
  /** False when only habit speaks for it. */
  readonly sure: boolean;
}

const MARKS: readonly (readonly [Encoding, readonly number[]])[] = [
  ['utf-8', [0xef, 0xbb, 0xbf]],
  ['utf-16le', [0xff, 0xfe]],
  ['utf-16be', [0xfe, 0xff]],
];

/**
 * Encoding of a text by its first bytes: byte order mark, zero bytes of UTF-16, valid UTF-8, else Windows-1252.
 *
 * @param head some kilobytes; it may end within a character
 */
export function guessEncoding(head: Uint8Array): GuessedEncoding {
  for (const [encoding, mark] of MARKS) {
    if (mark.every((byte, i) => head[i] === byte)) return { encoding, markBytes: mark.length, sure: true };
  }
  const wide = wideEncoding(head);
  if (wide) return { encoding: wide, markBytes: 0, sure: true };
  if (isUtf8(head)) return { encoding: 'utf-8', markBytes: 0, sure: true };
  return { encoding: 'windows-1252', markBytes: 0, sure: false };
}

/** Text of western figures in UTF-16 has a zero in nearly every second byte, and none in the others. */
function wideEncoding(head: Uint8Array): Encoding | undefined {
  const zeros = [0, 0];
  const length = head.length - (head.length % 2);
  for (let i = 0; i < length; i++) if (head[i] === 0) zeros[i % 2]! += 1;
  const most = (0.8 * length) / 2;
  if (length >= 4 && zeros[1]! >= most && zeros[0] === 0) return 'utf-16le';
  if (length >= 4 && zeros[0]! >= most && zeros[1] === 0) return 'utf-16be';
  return undefined;
}

/** Whether bytes are UTF-8, as far as they go. */
export function isUtf8(head: Uint8Array): boolean {
  try {
    // Streaming: a character that the end cuts is no fault.
    new TextDecoder('utf-8', { fatal: true }).decode(head, { stream: true });
    return true;
  } catch {
    return false;
  }
}
