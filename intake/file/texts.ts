import { decoderOf } from './decode.ts';
import { encodingFor } from './encoding.ts';
import type { Mapping } from './mapping.ts';

/** Bytes by which encoding and delimiter are told, and the size of the pieces that follow. */
export const HEAD_BYTES = 65_536;

/** Text of the file in pieces of bounded size; the first holds all of its head. */
export async function* textsOf(bytes: AsyncIterable<Uint8Array>, mapping: Mapping): AsyncGenerator<string> {
  let decoder: ReturnType<typeof decoderOf> | undefined;
  for await (const piece of piecesOf(bytes)) {
    if (decoder) {
      yield decoder.push(piece);
      continue;
    }
    const { encoding, markBytes } = encodingFor(mapping, piece);
    decoder = decoderOf(encoding);
    yield decoder.push(piece.subarray(markBytes));
  }
  if (decoder) yield decoder.end();
}

/** Gathers small pieces and cuts large ones, so that each but the last has the size of a head. */
async function* piecesOf(bytes: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  let held = new Uint8Array(HEAD_BYTES);
  let filled = 0;
  for await (const chunk of bytes) {
    for (let at = 0; at < chunk.length; ) {
      const part = chunk.subarray(at, at + HEAD_BYTES - filled);
      held.set(part, filled);
      filled += part.length;
      at += part.length;
      if (filled < HEAD_BYTES) continue;
      yield held;
      held = new Uint8Array(HEAD_BYTES);
      filled = 0;
    }
  }
  if (filled > 0) yield held.subarray(0, filled);
}
