import { describe, expect, it } from 'vitest';
import { places } from '../places.ts';
import { RING_OF_EIGHT } from '../testing/ring-of-eight.ts';
import { impliedGap, momentNmm } from './implied-gap.ts';
import { modelSchema } from './model-schema.ts';
import { plateClosing } from './plate-on-bed.ts';

const BAR = {
  kind: 'strip',
  count: 3,
  spacingMm: 100,
  endMm: 50,
  widthMm: 60,
  heightMm: 600,
  modulusMPa: 1e6,
  bedNPerMm3: 0.5,
  boltNPerMm: 1e6,
} as const;
const COVER = { heightMm: 20, modulusMPa: 200_000, poisson: 0.3, bedNPerMm3: 10 };
const GRID = { kind: 'rectangle', rows: 2, columns: 2, pitchXMm: 120, pitchYMm: 80, edgeOnly: false } as const;
const line = places({ kind: 'line', count: 3, pitchMm: 100 });
const grid = places(GRID);

const gapOf = (source: object, all: typeof line, forcesN: readonly number[]) => {
  const told = impliedGap({ model: modelSchema.parse(source) }, all, forcesN);
  return 'gapMm' in told ? told.gapMm : Number.NaN;
};

it('has the moment of forces along both axes', () => {
  expect(momentNmm(line, [0, 0, 10])).toEqual([1000, 0]);
  expect(momentNmm(grid, [0, 0, 10, 10])).toEqual([0, 800]);
});

describe('the gap that forces imply', () => {
  // a stiff bar of length L on a bed of k for each mm tilts by 12·M/(k·L³)
  it('of a bar that hardly bends is that of a stiff one on its bed', () => {
    const tilt = (12 * 1000 * 100) / (0.5 * 60 * 300 ** 3);
    expect(gapOf(BAR, line, [0, 0, 1000]) / (200 * tilt)).toBeCloseTo(1, 2);
    expect(gapOf(BAR, line, [500, 500, 500])).toBeLessThan(0.02 * 200 * tilt);
  });

  it('of a cover is the closing of the plate under one bolt less that across', () => {
    const closing = plateClosing(COVER);
    const [own, ...others] = [0, 120, 80, Math.hypot(120, 80)].map((apart) => 1000 * closing(apart));
    const gap = gapOf({ kind: 'plate', layout: GRID, boltNPerMm: 1e6, ...COVER }, grid, [1000, 0, 0, 0]);
    expect(gap).toBeCloseTo(own! - Math.min(...others), 12);
  });

  it('of even forces on a cover with its bolts alike is none', () => {
    expect(
      gapOf({ kind: 'plate', layout: GRID, boltNPerMm: 1e6, ...COVER }, grid, [7000, 7000, 7000, 7000]),
    ).toBeCloseTo(0, 12);
  });

  it('of flanges does not depend on how stiff their bolts are', () => {
    const circle = places({ kind: 'circle', count: 8, diameterMm: 260, firstAngleDeg: 0, direction: 'clockwise' });
    const forcesN = [1000, 0, 0, 0, 0, 0, 0, 0];
    expect(gapOf({ ...RING_OF_EIGHT, boltNPerMm: 1 }, circle, forcesN)).toBe(gapOf(RING_OF_EIGHT, circle, forcesN));
    expect(Math.hypot(...momentNmm(circle, forcesN))).toBeCloseTo(130_000, 6);
    expect(momentNmm(circle, [1000, 0, 700, 0, 1000, 0, 700, 0])).toEqual([0, 0]);
  });

  it.each([
    [{ complianceMmPerN: [[1]] }, 'with-bolts'],
    [{ interaction: [[1]] }, 'up-to-scale'],
    [
      { model: modelSchema.parse({ kind: 'neighbours', arrangement: 'line', count: 3, neighbour: 0.2, decay: 0.1 }) },
      'up-to-scale',
    ],
  ])('is not told where the compliance does not tell it: %j', (source, whyNoGap) => {
    expect(impliedGap(source, line, [1, 2, 3])).toEqual({ whyNoGap });
  });
});
