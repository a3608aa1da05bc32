import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convertTorque } from '../quantity/convert.ts';
import { derivationSchema, derivationStands } from './derivation.ts';
import { deriveTarget, type TargetWanted } from './derive-target.ts';
import { aDerivation, aJoint, anOwnBolt, torqueWindow } from './testing/a-joint.ts';

fc.configureGlobal({ seed: 31 });

const wanted: TargetWanted = {
  thread: 'M12',
  ownBolt: undefined,
  propertyClass: '8.8',
  ownMaterial: undefined,
  threadFriction: 0.12,
  bearingFriction: 0.12,
  ownLubricant: undefined,
  utilization: 0.9,
  tighteningFactor: 1.6,
  plusMinusPercent: 5,
  torqueUnit: 'N·m',
  sources: ['trial'],
};

const derived = (more: Partial<TargetWanted> = {}) => {
  const result = deriveTarget({ ...wanted, ...more });
  if (!result.ok) throw new Error(JSON.stringify(result.failure));
  return result.value;
};

const stud = {
  kind: 'material',
  id: '01991f3c-0000-7000-8000-000000000003',
  name: 'Stud of lot 7',
  source: 'Certificate',
  yieldStrengthMPa: 700,
  tensileStrengthMPa: 860,
  by: { id: '01991f3c-0000-7000-8000-000000000002', name: 'Lead' },
  addedAt: '2026-03-02T06:00:00.000Z',
} as const;

describe('deriveTarget', () => {
  // VDI 2230-1, table A1: M12 8.8 at µ = 0.12: F_M = 43.0 kN, M_A = 84 N·m (from memory; the head of the table is wider than ISO 4014's now)
  it('comes near the printed assembly table', () => {
    const { output } = derived().derivation;
    expect(Math.abs(output.preloadN / 43_000 - 1)).toBeLessThan(0.015);
    expect(Math.abs(output.torqueNm / 84 - 1)).toBeLessThan(0.015);
  });

  it('keeps what went in, the working and the window that it fills in', () => {
    const { derivation, target } = derived();
    expect(derivationSchema.parse(derivation)).toEqual(derivation);
    expect(target).toBe(83.4);
    expect(derivation.filled).toEqual({ lowerNm: 79.23, targetNm: 83.4, upperNm: 87.57000000000001 });
    expect(derivation.steps.at(-1)).toMatchObject({ symbol: 'F_Mmin', withNumbers: '43\u202f111.3/1.6' });
    expect(derivation.output.utilizationAtUpper).toBeCloseTo(0.9 * 1.05, 2);
  });

  it('takes the strength of an own material, and copies the row', () => {
    const { derivation } = derived({ ownMaterial: stud });
    expect(derivation.input).toMatchObject({ yieldStrengthMPa: 700 });
    expect(derivation.input).not.toHaveProperty('propertyClass');
    expect(derivation.ownRows).toEqual([stud]);
    expect(derivation.output.preloadN / derived().derivation.output.preloadN).toBeCloseTo(700 / 640, 6);
  });

  it('takes the dimensions of an own bolt, copies the row, and says what was worked out', () => {
    const own = derived({ thread: anOwnBolt.name, ownBolt: anOwnBolt });
    expect(own.derivation.input).toMatchObject({ thread: 'Tie rod 23', propertyClass: '8.8' });
    expect(own.derivation.ownRows).toEqual([anOwnBolt]);
    expect(derivationSchema.parse(own.derivation)).toEqual(own.derivation);
    expect(own.derivation.warnings).toContainEqual(
      expect.objectContaining({ field: 'thread', code: 'bolt-worked-out' }),
    );
    const preloads = ['M22x2', 'M24x2'].map((thread) => derived({ thread }).derivation.output.preloadN);
    expect(own.derivation.output.preloadN).toBeGreaterThan(preloads[0]!);
    expect(own.derivation.output.preloadN).toBeLessThan(preloads[1]!);
  });

  it('never rounds up, and by less than a hundredth, whatever the unit', () => {
    const units = fc.constantFrom('N·m', 'lbf·ft', 'lbf·in', 'kgf·m', 'cN·m' as const);
    fc.assert(
      fc.property(units, fc.double({ min: 0.04, max: 0.4, noNaN: true }), (torqueUnit, friction) => {
        const { target, derivation } = derived({ torqueUnit, threadFriction: friction, bearingFriction: friction });
        const share = convertTorque(target, torqueUnit, 'N·m') / derivation.output.torqueNm;
        expect(share).toBeLessThanOrEqual(1 + 1e-12);
        expect(share).toBeGreaterThan(0.99);
      }),
    );
  });

  it.each([
    [{ thread: 'M12.5' }, 'thread'],
    [{ propertyClass: '8.9' }, 'propertyClass'],
    [{ propertyClass: undefined }, 'propertyClass'],
  ])('refuses %j, naming %s', (wrong, field) => {
    expect(deriveTarget({ ...wanted, ...wrong })).toMatchObject({ failure: { kind: 'invalid', field } });
  });
});

describe('a derivation', () => {
  const stagesWith = (lowerNm: number, upperNm: number) =>
    aJoint().stages.map((stage) => ({ ...stage, torque: torqueWindow(lowerNm, upperNm) }));

  it('stands while a stage has its window, and no longer once that was typed over', () => {
    expect(derivationStands(aDerivation, stagesWith(95, 105))).toBe(true);
    expect(derivationStands(aDerivation, stagesWith(95, 106))).toBe(false);
  });
});
