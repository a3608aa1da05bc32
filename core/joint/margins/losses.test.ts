import { describe, expect, it } from 'vitest';
import { embeddingLossN, embeddingUm, surfacesOf, temperatureGainN } from './losses.ts';

describe('embedding', () => {
  it('counts thread, both faces and each interface', () => {
    expect(surfacesOf({ jointType: 'through', headForm: 'hexagon' }, 2)).toEqual({
      threads: 1,
      bearings: 2,
      interfaces: 1,
    });
    expect(surfacesOf({ jointType: 'tapped', headForm: 'socket' }, 1)).toEqual({
      threads: 1,
      bearings: 1,
      interfaces: 1,
    });
    expect(surfacesOf({ jointType: 'through', headForm: 'stud' }, 3)).toEqual({
      threads: 2,
      bearings: 2,
      interfaces: 2,
    });
  });

  it.each([
    [8, false, 9.5],
    [10, false, 9.5],
    [25, false, 11],
    [160, false, 14],
    [25, true, 14.5],
  ])('of Rz %d µm, sheared: %s, is %d µm', (roughnessUm, isSheared, expected) => {
    expect(embeddingUm({ threads: 1, bearings: 2, interfaces: 1 }, roughnessUm, isSheared)).toBe(expected);
  });

  it('takes more preload the stiffer the joint', () => {
    expect(embeddingLossN(9.5, 3.676e-6)).toBeCloseTo(2584, 0);
  });
});

describe('warmth', () => {
  const bolt = { lengthMm: 40, expansionPerK: 11.7e-6, riseK: 100 };

  it('changes nothing where all grows alike', () => {
    expect(
      temperatureGainN(
        bolt,
        [
          { ...bolt, lengthMm: 25 },
          { ...bolt, lengthMm: 15 },
        ],
        3.676e-6,
      ),
    ).toBeCloseTo(0, 6);
  });

  it('tightens aluminium under a steel bolt, and loosens it in the cold', () => {
    const gain = (riseK: number) =>
      temperatureGainN({ ...bolt, riseK }, [{ lengthMm: 40, expansionPerK: 23.6e-6, riseK }], 3.676e-6);
    expect(gain(100)).toBeCloseTo((40 * 11.9e-6 * 100) / 3.676e-6, 6);
    expect(gain(-60)).toBeCloseTo(-0.6 * gain(100), 6);
  });

  it('loosens a joint whose bolt is hotter than its parts', () => {
    expect(temperatureGainN(bolt, [{ ...bolt, riseK: 20 }], 3.676e-6)).toBeLessThan(0);
  });
});
