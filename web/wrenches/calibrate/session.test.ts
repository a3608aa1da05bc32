import { calibrationPlan, type Wrench } from '@clampwright/core/wrench';
import { describe, expect, it } from 'vitest';
import { readPasted } from './pasted.ts';
import { type Act, comparisonOf, deviationPercent, nextOf } from './session.ts';

const wrench = { type: 'I', class: 'B', lowestNm: 20, highestNm: 100 } as const satisfies Partial<Wrench>;
const planned = calibrationPlan(wrench);
if (!planned.ok) throw new Error('a class of ISO 6789-1');
const plan = planned.value;

const begun: readonly Act[] = [
  { kind: 'preload', direction: 'clockwise' },
  { kind: 'zero', direction: 'clockwise' },
];
const lines = (count: number) => Array.from({ length: count }, (_, n) => `${20 + n / 10}`).join('\n');

describe('a calibration under way', () => {
  it('asks for what the plan orders, one after the other', () => {
    expect(nextOf(plan, [])?.step.kind).toBe('preload');
    expect(nextOf(plan, begun.slice(0, 1))?.step.kind).toBe('zero');
    expect(nextOf(plan, begun)).toMatchObject({ step: { kind: 'point', torqueNm: 20 }, number: 1, of: 5 });
  });

  it('is done when every point has its repeats, and taking one back asks for it again', () => {
    const pasted = readPasted(lines(15), plan, begun, 'en');
    if (!pasted.ok) throw new Error(JSON.stringify(pasted));
    const acts = [...begun, ...pasted.readings];
    expect(nextOf(plan, acts)).toBeUndefined();
    expect(nextOf(plan, acts.slice(0, -1))).toMatchObject({ step: { torqueNm: 100 }, number: 5 });
    const kept = comparisonOf(plan, { at: '2026-03-02T06:00:00.000Z', acts }, {});
    expect(kept.preloadings).toBe(1);
    expect(kept.points.map(({ targetNm, referenceNm }) => [targetNm, referenceNm.length])).toEqual([
      [20, 5],
      [60, 5],
      [100, 5],
    ]);
    expect(kept.points[0]).not.toHaveProperty('indicatedNm');
  });

  it('tells a deviation by the reference', () => {
    const reading = { kind: 'reading', direction: 'clockwise', targetNm: 60, referenceNm: 50 } as const;
    expect(deviationPercent(reading)).toBe(20);
    expect(deviationPercent({ ...reading, indicatedNm: 49 })).toBe(-2);
  });
});

describe('readings from a text', () => {
  it('are wrench and reference, in the figures of the language, under names or without', () => {
    const pasted = readPasted('Schlüssel;Normal\n20,1;20,0\n20,2\t19,9\r\n\n', plan, begun, 'de');
    expect(pasted).toMatchObject({
      ok: true,
      readings: [
        { targetNm: 20, indicatedNm: 20.1, referenceNm: 20 },
        { targetNm: 20, indicatedNm: 20.2, referenceNm: 19.9 },
      ],
    });
  });

  it.each([
    ['20.1\nrubbish', begun, 2, 'unreadable'],
    ['1 2 3', begun, 1, 'unreadable'],
    [lines(16), begun, 16, 'too-many'],
    ['20', [], 1, 'too-many'],
  ] as const)('are refused by line: %j', (text, acts, line, fault) => {
    expect(readPasted(text, plan, acts, 'en')).toMatchObject({ ok: false, line, fault });
  });
});
