import { isAscii } from 'node:buffer';
import { type Decoder, decoderOf } from './decode.ts';
import { guessEncoding, isUtf8 } from './encoding.ts';
import type { Encoding, Mapping } from './mapping.ts';

/** Bytes by which encoding and delimiter are told. */
const HEAD_BYTES = 65_536;
/** Pieces after the head: small, so that the pulls of one are garbage before the next (a quarter faster than with 64 kB). */
const PIECE_BYTES = 16_384;

/** Text of the file in pieces of bounded size; the first holds all of its head. */
export async function* textsOf(bytes: AsyncIterable<Uint8Array>, mapping: Mapping): AsyncGenerator<string> {
  let head: Decoder | undefined;
  let decoder: Decoder | undefined;
  for await (const piece of piecesOf(bytes)) {
    if (head === undefined) {
      const { encoding, markBytes, isOpen } = headEncoding(mapping, piece);
      head = decoderOf(encoding);
      if (!isOpen) decoder = head;
      yield head.push(piece.subarray(markBytes));
      continue;
    }
    if (decoder === undefined && !isAscii(piece)) decoder = decoderOf(isUtf8(piece) ? 'utf-8' : 'windows-1252');
    yield (decoder ?? head).push(piece);
  }
  yield (decoder ?? head)?.end() ?? '';
}

interface HeadEncoding {
  readonly encoding: Encoding;
  readonly markBytes: number;
  /** Plain ASCII so far: it shows only later whether the file is UTF-8 or Windows-1252. */
  readonly isOpen: boolean;
}

/** A byte order mark is the file's own word and comes before the mapping's. */
function headEncoding(mapping: Mapping, head: Uint8Array): HeadEncoding {
  const { encoding, markBytes } = guessEncoding(head);
  if (mapping.encoding !== 'auto' && markBytes === 0) return { encoding: mapping.encoding, markBytes, isOpen: false };
  return { encoding, markBytes, isOpen: encoding === 'utf-8' && markBytes === 0 && isAscii(head) };
}

/** Gathers small pieces and cuts large ones to the sizes above. */
async function* piecesOf(bytes: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  let held = new Uint8Array(HEAD_BYTES);
  let filled = 0;
  for await (const chunk of bytes) {
    for (let at = 0; at < chunk.length; ) {
      const part = chunk.subarray(at, at + held.length - filled);
      held.set(part, filled);
      filled += part.length;
      at += part.length;
      if (filled < held.length) continue;
      yield held;
      held = new Uint8Array(PIECE_BYTES);
      filled = 0;
    }
  }
  if (filled > 0) yield held.subarray(0, filled);
}
