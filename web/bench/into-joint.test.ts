import { type CalculationName, calculate } from '@clampwright/core/calculations';
import { describe, expect, it } from 'vitest';
import { begunWith } from '../joints/brought/begin-derivation.ts';
import { broughtIn } from '../joints/brought/brought.ts';
import { blankDerive, readDerive } from '../joints/derive/derive-form.ts';
import { BLANK_JOINT } from '../joints/form/blank.ts';
import { exampleOf } from './example.ts';
import { broughtFrom } from './into-joint.ts';

const brought = (name: CalculationName, more: Readonly<Record<string, unknown>> = {}) => {
  const input = { ...exampleOf(name), ...(name === 'preload' ? { draws: 0 } : {}), ...more };
  const result = calculate(name, input);
  if (!result.ok) throw new Error(JSON.stringify(result.failure));
  return broughtFrom(name, input, result.value);
};

describe('what a calculation brings into a joint', () => {
  it('is of a torque its figure, with what it may be off as the window', () => {
    // Normal: twice the standard uncertainty holds 95 % (JCGM 100:2008, 6.3.3); 2 · 1.6/80.
    expect(brought('preload')).toEqual({
      thread: 'M12',
      propertyClass: '8.8',
      stage: { kind: 'torque', torque: { target: 80, percent: 4 } },
    });
    // Rectangular: all of it lies within √3 standard uncertainties (JCGM 100:2008, 4.3.7).
    const torqueNm = { value: 100, standardUncertainty: 2 / Math.sqrt(3), distribution: 'rectangular' };
    expect(brought('preload', { torqueNm })?.stage?.torque?.percent).toBe(2);
    expect(brought('preload', { torqueNm: 80 })?.stage?.torque).toEqual({ target: 80, percent: undefined });
  });

  it('is of an angle its target, from which torque it counts, and the torque to expect', () => {
    const stage = brought('tightening-angle')?.stage;
    expect(stage?.kind).toBe('torque-and-angle');
    expect(stage?.angleFromNm).toBe(250);
    expect(stage?.angle?.target).toBeGreaterThan(0);
    const { lower = 0, target = 0, upper = 0 } = stage?.torque ?? {};
    expect(lower).toBeLessThan(target);
    expect(target).toBeLessThan(upper);
  });

  it('is of a checked joint a derivation that comes back to its greatest preload', () => {
    const found = broughtIn(brought('joint-check', { bearingFriction: 0.14 }));
    const choices = { frictions: [], bolts: [], materials: [], wrenches: [] };
    const form = begunWith(blankDerive(BLANK_JOINT, 'en'), found, choices, 'en');
    const citing = { friction: () => 'friction', method: () => 'method' };
    const told = { ...form, frictionSource: 'Test', plusMinusPercent: '5' };
    const { derived } = readDerive(told, choices, 'N·m', 'en', citing);
    // Utilisation is shown to a tenth of a percent.
    expect((derived?.derivation.output.preloadN ?? 0) / 41_900).toBeCloseTo(1, 2);
    expect(derived?.derivation.input.tighteningFactor).toBe(1.8);
  });

  it('is a torque stage where the joint was checked at a torque', () => {
    const input = { preloadN: undefined, torqueNm: 80, bearingFriction: 0.14 };
    expect(brought('joint-check', input)?.stage).toEqual({ kind: 'torque', torque: { target: 80 } });
  });

  it('takes an own bolt along by its designation', () => {
    const thread = { designation: 'Tie rod 23', majorDiameterMm: 23, pitchMm: 2, bearingOuterMm: 34, holeMm: 25 };
    expect(brought('assembly-torque', { thread, threadFriction: 0.12, bearingFriction: 0.12 })?.thread).toBe(
      'Tie rod 23',
    );
  });

  it.each(['convert', 'fastener', 'torque-plausibility', 'compliance', 'friction'] as const)(
    'is nothing of %s',
    (name) => {
      expect(brought(name)).toBeUndefined();
    },
  );
});
