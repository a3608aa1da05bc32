import { expect, it } from 'vitest';
import { progress } from './progress.ts';

/** Passes on ten pieces of ten bytes, of which each takes so long; gives what was told. */
async function told(eachMs: number, most = Number.POSITIVE_INFINITY): Promise<string> {
  let nowMs = 0;
  let text = '';
  async function* pieces(): AsyncGenerator<Uint8Array> {
    for (let i = 0; i < 10; i++) yield new Uint8Array(10);
  }
  let taken = 0;
  for await (const piece of progress(pieces(), 100, { nowMs: () => nowMs, write: (more) => (text += more) })) {
    nowMs += eachMs;
    taken += piece.length / 10;
    if (taken === most) break;
  }
  return text;
}

it('says nothing of what is done within a second', async () => {
  expect(await told(99)).toBe('');
});

it('says how far it is after a second, and then twice a second', async () => {
  expect(await told(300)).toBe('\r40 %\r60 %\r80 %\r100 %\n');
});

it('ends its line also when the reading breaks off', async () => {
  expect(await told(600, 4)).toBe('\r20 %\r30 %\n');
});
