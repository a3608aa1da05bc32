import { describe, expect, it } from 'vitest';
import { readJson } from './body.ts';

const sent = (body: BodyInit): Request => new Request('http://localhost/', { method: 'POST', body });

describe('readJson', () => {
  it('reads a document that comes in pieces, even within a character', async () => {
    const bytes = new TextEncoder().encode('{"unit":"N·m"}');
    const pieces = new ReadableStream<Uint8Array>({
      start: (room) => {
        for (const byte of bytes) room.enqueue(Uint8Array.of(byte));
        room.close();
      },
    });
    const streamed = { method: 'POST', body: pieces, duplex: 'half' };
    const request = new Request('http://localhost/', streamed);
    expect(await readJson(request, 100)).toEqual({ ok: true, value: { unit: 'N·m' } });
  });

  it.each([
    ['a comma too many', '{"a":1,}'],
    ['an end too early', '{"a":'],
    ['nothing at all', ''],
    ['a file that is no text', Uint8Array.of(0x7b, 0xff, 0xfe, 0x00)],
  ])('names %s as what cannot be read', async (_what, body) => {
    expect(await readJson(sent(body), 100)).toMatchObject({
      ok: false,
      failure: { kind: 'invalid', field: '(whole input)' },
    });
  });

  it('stops reading at the size that was agreed', async () => {
    expect(await readJson(sent(`"${'x'.repeat(100)}"`), 100)).toMatchObject({
      ok: false,
      failure: { kind: 'too-large' },
    });
  });
});
