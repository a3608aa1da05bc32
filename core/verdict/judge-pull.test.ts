import { describe, expect, it } from 'vitest';
import type { DecisionRule } from '../joint/joint.ts';
import type { Step } from '../procedure/step.ts';
import { aWrench, uncalibrated } from '../wrench/testing/a-wrench.ts';
import type { Tool } from '../wrench/wrench.ts';
import { judgePull } from './judge-pull.ts';

const step: Step = {
  stage: 1,
  round: 1,
  kind: 'torque',
  order: [1],
  torque: { lowerNm: 95, targetNm: 100, upperNm: 105 },
  angle: undefined,
  angleFromNm: undefined,
  speedLimitDegPerS: undefined,
};
// U = 2 %: u = 1 N·m at 100 N·m
const wrench = aWrench({ resolutionNm: 1e-9 }, { expandedUncertaintyPercent: 2 });
const judged = (torqueNm: number, decisionRule: DecisionRule, tool: Tool = { wrench }) =>
  judgePull(step, { torqueNm }, { carriedDeg: 0, tool, decisionRule });

describe('a pull judged by risk', () => {
  const rule: DecisionRule = { kind: 'risk', maximum: 0.05 };

  it('is within as long as the chance of lying outside is small enough', () => {
    expect(judged(103.1, rule).verdict).toBe('within');
    expect(judged(103.4, rule).verdict).toBe('doubtful');
    expect(judged(105.1, rule).verdict).toBe('over');
  });

  it('keeps the chance and the uncertainty that it was judged with', () => {
    const { reasons, expandedUncertaintyNm } = judged(104, rule);
    expect(expandedUncertaintyNm).toBeCloseTo(2.08, 9);
    // Φ(−1/1.04) = 0.168, from tables of the normal distribution
    expect(reasons).toEqual([
      { code: 'inside-guard-band', quantity: 'torque', value: 104, limit: 105, probability: 0.168 },
    ]);
  });

  it('is doubtful without a chance where nobody knows the uncertainty', () => {
    const { verdict, reasons } = judged(100, rule, { wrench: uncalibrated() });
    expect(verdict).toBe('doubtful');
    expect(reasons[0]).not.toHaveProperty('probability');
  });
});

describe('a pull judged with a guard band', () => {
  it('tells the chance beside the doubt', () => {
    expect(judged(104, { kind: 'guarded', factor: 1 }).reasons[0]).toMatchObject({ probability: 0.168 });
    expect(judged(102.9, { kind: 'guarded', factor: 1 }).verdict).toBe('within');
  });
});

describe('an angle behind an extension', () => {
  const angleStep: Step = {
    ...step,
    kind: 'angle',
    angle: { lowerDeg: 55, targetDeg: 60, upperDeg: 65 },
    angleFromNm: 20,
  };
  const extension = { id: wrench.id, name: 'Bar', lengthMm: 250, stiffnessNmPerDeg: 20 };
  const at = (angleDeg: number, stiffnessStandardUncertaintyPercent?: number) =>
    judgePull(
      angleStep,
      { torqueNm: 100, angleDeg },
      {
        carriedDeg: 0,
        decisionRule: { kind: 'guarded', factor: 1 },
        tool: {
          wrench,
          extension: {
            ...extension,
            ...(stiffnessStandardUncertaintyPercent === undefined ? {} : { stiffnessStandardUncertaintyPercent }),
          },
        },
      },
    ).reasons[1]?.code;

  // 80 N·m over 20 N·m/° wind up 4°; 10 % of it is 0.4°, U = 0.8°
  it('is in doubt as far as the stiffness is', () => {
    expect(at(64.5)).toBe('inside');
    expect(at(64.5, 10)).toBe('inside-guard-band');
    expect(at(64.1, 10)).toBe('inside');
  });
});
