import { describe, expect, it } from 'vitest';
import { CALCULATIONS } from '../calculations/registry.ts';
import type { Picture } from '../plot/picture.ts';
import { picturesOf } from './pictures-of.ts';

const scribe = { language: 'en', units: {}, field: (name: string) => name, value: (text: string) => text } as const;

function drawn(name: string, input?: unknown): readonly Picture[] {
  const entry = CALCULATIONS.find((one) => one.name === name);
  const result = entry?.run(input ?? entry.example);
  if (!entry || !result?.ok) throw new Error(name);
  return picturesOf(input ?? entry.example, result.value, scribe);
}

const marksOf = (pictures: readonly Picture[]) =>
  pictures.flatMap((picture) => (picture.kind === 'plot' ? picture.plot.marks : []));

describe('pictures of the care of wrenches', () => {
  it('show each deviation and each mean with its uncertainty, against what is permissible', () => {
    const marks = marksOf(drawn('wrench-calibration'));
    expect(marks.map(({ kind }) => kind)).toEqual(['window', 'points', 'points']);
    expect(marks[1]).toMatchObject({ points: { length: 15 } });
    expect(marks[2]).toMatchObject({
      points: [{ x: 40, y: expect.closeTo(-0.8913, 4), low: expect.closeTo(-2.515, 3) }, {}, {}],
    });
  });

  it('hatch what lies outside of the limits, and nothing where all lies inside', () => {
    const hatched = (input?: unknown) =>
      marksOf(drawn('conformity', input)).filter((mark) => mark.kind === 'band' && mark.isHatched);
    expect(hatched()).toHaveLength(1);
    expect(hatched({ value: 0, standardUncertainty: 0.1, lower: -4, upper: 4 })).toHaveLength(0);
    expect(hatched({ value: 0, standardUncertainty: 3, lower: -4, upper: 4 })).toHaveLength(2);
  });

  it('show what is decided wrongly on both sides of each limit, no higher than what is made', () => {
    const bands = marksOf(drawn('decision-risk')).filter((mark) => mark.kind === 'band');
    expect(bands).toHaveLength(3);
    for (const { points } of bands)
      for (const { high } of points) {
        expect(high).toBeGreaterThanOrEqual(0);
        expect(high).toBeLessThanOrEqual(1);
      }
  });

  it('draw nothing where measuring is exact', () => {
    expect(drawn('conformity', { value: 1, standardUncertainty: 0, upper: 2 })).toEqual([]);
  });
});
