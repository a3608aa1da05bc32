import { describe, expect, it } from 'vitest';
import { analyseTrace } from '../analyse.ts';
import { learn } from '../expectation.ts';
import { traceOptionsSchema } from '../judged-by.ts';
import { typed } from '../samples.ts';
import { madeCurve } from '../testing/made-curve.ts';

const WINDOW = { lowerNm: 95, targetNm: 100, upperNm: 105 };
type Options = Partial<ReturnType<typeof traceOptionsSchema.parse>>;

const kinds = (toDeg: number, torqueAt: (deg: number) => number, options: Options = {}) => {
  const read = analyseTrace(typed(madeCurve(0.1, toDeg, torqueAt)), traceOptionsSchema.parse(options), WINDOW);
  return read.kind === 'loosening' ? ['loosening'] : read.findings.map(({ kind }) => kind);
};
/** Runs down for 40°, then straight up. */
const straight = (slope: number) => (deg: number) => (deg <= 40 ? 1 : 1 + slope * (deg - 40));
const expected = learn(
  Array.from({ length: 8 }, (_, n) => ({ slopeNmPerDeg: 1.95 + n / 70, prevailingTorqueNm: 1, angleFromSnugDeg: 50 })),
);
const taught = expected ? { expected } : {};

describe('findings on made curves', () => {
  it('are none on a sound one, whether or not anything is known of the joint', () => {
    expect(kinds(89.5, straight(2))).toEqual([]);
    expect(kinds(89.5, straight(2), taught)).toEqual([]);
  });

  it('hold the slope to what was learned', () => {
    expect(kinds(65, straight(4), taught)).toEqual(['bottomed']);
    expect(kinds(139, straight(1), taught)).toEqual(['too-soft']);
    expect(kinds(139, straight(1))).toEqual([]);
  });

  it('tell a re-start from a tightening: wind-up of the wrench, then the fastener moves on', () => {
    const restart = (deg: number) => (deg <= 6 ? 14 * deg : 84 + 1.6 * (deg - 6));
    expect(kinds(16, restart)).toEqual(['already-tight']);
    expect(kinds(16, restart, { startsAtNm: 80 })).toEqual([]);
    expect(kinds(16, restart, { startsAtNm: 50 })).toEqual(['already-tight']);
  });

  it('tell that torque falls while the fastener turns on', () => {
    const strips = (deg: number) => (deg <= 70 ? straight(2)(deg) : 61 - 0.8 * (deg - 70));
    expect(kinds(110, strips)).toEqual(['stripping']);
  });

  it('tell yield unless it is intended', () => {
    const yields = (deg: number) => (deg <= 80 ? straight(2)(deg) : 81 + 0.3 * (deg - 80));
    expect(kinds(130, yields)).toEqual(['yielded']);
    expect(kinds(130, yields, { intendsYield: true })).toEqual([]);
  });

  it('doubt early torque unless the joint states that its fastener takes it', () => {
    // forms its thread over 400° at 40 N·m, then clamps
    const forms = (deg: number) => Math.min(2 * deg, 40) + Math.max(0, 2 * (deg - 400));
    expect(kinds(430, forms)).toEqual(['crossed-thread']);
    expect(kinds(430, forms, { prevailingUpToNm: 45 })).toEqual([]);
    expect(kinds(430, forms, { ...taught, prevailingUpToNm: 45 })).toEqual([]);
    expect(kinds(430, forms, { prevailingUpToNm: 35 })).toEqual(['crossed-thread']);
  });

  it('doubt a thread that binds more and more, whatever the joint states', () => {
    const binds = (deg: number) => 1 + 0.2 * deg;
    expect(kinds(495, binds, { ...taught, prevailingUpToNm: 20 })).toContain('crossed-thread');
  });

  it('never take loosening for a tightening', () => {
    expect(kinds(89.5, (deg) => -straight(2)(deg))).toEqual(['loosening']);
  });
});

describe('learning', () => {
  const figures = { slopeNmPerDeg: 2, prevailingTorqueNm: 1 };

  it('waits for eight traces', () => {
    expect(learn(Array.from({ length: 7 }, () => figures))).toBeUndefined();
    expect(learn(Array.from({ length: 8 }, () => figures))).toMatchObject({ basis: 'learned', traces: 8 });
  });

  it('is hardly moved by one that is far off', () => {
    const one = { slopeNmPerDeg: 20, prevailingTorqueNm: 1 };
    expect(learn([...Array.from({ length: 8 }, () => figures), one])?.slopeNmPerDeg).toEqual({
      median: 2,
      deviation: 0,
    });
  });
});
