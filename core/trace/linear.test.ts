import { describe, expect, it } from 'vitest';
import { analyseTrace } from './analyse.ts';
import { traceOptionsSchema } from './judged-by.ts';
import { madeCurve } from './testing/made-curve.ts';

/** The same figures; tells of each time that one of them is looked at. */
const watched = (values: readonly number[], looked: () => void): readonly number[] =>
  new Proxy(values, {
    get: (target, key): unknown => {
      if (typeof key === 'string' && Number.isInteger(Number(key))) looked();
      return Reflect.get(target, key);
    },
  });

/** How often samples are looked at in the whole reading of a trace. */
function looksAt(samples: number, secondsADegree: number): number {
  const { angleDeg, torqueNm } = madeCurve(230 / (samples - 1));
  let looks = 0;
  const count = (values: readonly number[]) => watched(values, () => looks++);
  const timeS = angleDeg.map((deg) => deg * secondsADegree);
  analyseTrace(
    { angleDeg: count(angleDeg), torqueNm: count(torqueNm), timeS: count(timeS) },
    traceOptionsSchema.parse({}),
    { lowerNm: 150, targetNm: 160, upperNm: 170 },
  );
  return looks;
}

describe('the work of reading a trace', () => {
  it.each([
    ['a calm pull', 1 / 20],
    ['one so fast that its speed is looked at again', 1 / 60],
  ])('grows with its samples and no faster: %s', (_, secondsADegree) => {
    const [some, twice, fourTimes] = [4001, 8001, 16_001].map((samples) => looksAt(samples, secondsADegree));
    expect(some).toBeGreaterThan(3 * 4001);
    expect(twice! / some!).toBeLessThan(2.05);
    expect(fourTimes! / twice!).toBeLessThan(2.05);
    // a bound on the whole: a handful of looks at each of the three figures of a sample
    expect(fourTimes! / 16_001).toBeLessThan(60);
  });
});
