import { promisify } from 'node:util';
import { deflateRaw } from 'node:zlib';
import type { Trace } from '@clampwright/core/record';
import { describe, expect, it } from 'vitest';
import { pack, unpack } from './traces.ts';

const compress = promisify(deflateRaw);

/** As a hand wrench tells it: tenths of a degree and of a newton metre, a hundred samples a second. */
const trace: Trace = {
  timeS: Array.from({ length: 800 }, (_, i) => Number((i / 100).toFixed(6))),
  angleDeg: Array.from({ length: 800 }, (_, i) => Number((i / 10).toFixed(1))),
  torqueNm: Array.from({ length: 800 }, (_, i) => Number((4 + ((i * 7) % 5) / 10 + (i / 80) ** 2).toFixed(1))),
};

describe('the forms in which traces are stored', () => {
  it('the newest gives every digit back', async () => {
    expect(unpack(pack(trace))).toEqual(trace);
  });

  it('the first, deflated JSON, is still read', async () => {
    const first = Buffer.concat([Buffer.of(1), await compress(JSON.stringify(trace))]);
    expect(unpack(first)).toEqual(trace);
    expect(pack(trace).length).toBeLessThan(first.length / 2);
  });

  it('one from later is refused, not guessed', async () => {
    expect(() => unpack(Uint8Array.of(3, 0))).toThrow('form 3');
  });
});
