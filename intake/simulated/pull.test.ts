import { windUpDeg } from '@clampwright/core/procedure';
import { traceSchema } from '@clampwright/core/record';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EXAMPLE_JOINT, EXAMPLE_TOOL } from './example.ts';
import { looseFastener, tightenedFastener } from './fastener.ts';
import { FAULTS } from './fault.ts';
import type { Aim, SimulatedModel } from './model.ts';
import { modelFor } from './model-for.ts';
import { simulatePull } from './pull.ts';

const made = modelFor(EXAMPLE_JOINT, EXAMPLE_TOOL);
if (!made.ok) throw new Error('the example has a model');
const model = made.value;
const SEEDS = Array.from({ length: 200 }, (_, seed) => seed);
const TORQUE: Aim = { torqueNm: 60 };
const ANGLE: Aim = { torqueNm: 120, angleDeg: 40, angleFromNm: 60, speedLimitDegPerS: 90 };
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

const pullLoose = (seed: number, aim: Aim = TORQUE, of: SimulatedModel = model) =>
  simulatePull({ model: of, aim, fault: 'none', seed, fastener: looseFastener(of.joint, seed) });
const pullOn = (seed: number, aim: Aim = ANGLE, of: SimulatedModel = model) =>
  simulatePull({ model: of, aim, fault: 'none', seed, fastener: tightenedFastener(of.joint, seed, 60) });

describe('simulatePull', () => {
  it('is the same for the same seed', () => {
    expect(pullLoose(7)).toEqual(pullLoose(7));
  });

  it('hits the torque within a hand’s scatter', () => {
    const shown = SEEDS.map((seed) => pullLoose(seed).shownTorqueNm);
    expect(Math.abs(mean(shown) - 60)).toBeLessThan(1);
    expect(shown.filter((torqueNm) => torqueNm >= 57 && torqueNm <= 63).length).toBeGreaterThan(190);
    expect(new Set(shown).size).toBeGreaterThan(10);
  });

  it('meets angle and torque of a joint together when it goes on from the stage before', () => {
    const pulls = SEEDS.map((seed) => pullOn(seed));
    expect(Math.abs(mean(pulls.map((pull) => pull.shownAngleDeg)) - 40)).toBeLessThan(1);
    expect(Math.abs(mean(pulls.map((pull) => pull.shownTorqueNm)) - 120)).toBeLessThan(3);
    expect(pulls.every((pull) => pull.shownTorqueNm > 100 && pull.shownTorqueNm < 140)).toBe(true);
  });

  it('counts no angle below the threshold torque', () => {
    const { trace, countedDeg, shownAngleDeg } = pullLoose(3, { torqueNm: 60, angleFromNm: 40 });
    const begins = trace.torqueNm.findIndex((torqueNm) => torqueNm > 39);
    expect(countedDeg.slice(0, begins).every((angleDeg) => angleDeg === 0)).toBe(true);
    expect(countedDeg.at(-1)).toBeGreaterThan(5);
    expect(shownAngleDeg).toBe(countedDeg.at(-1));
  });

  it('traces the angle from where the pull began', () => {
    const { trace } = pullLoose(3, { torqueNm: 60, angleFromNm: 40 });
    const begins = trace.torqueNm.findIndex((torqueNm) => torqueNm > 39);
    expect(trace.angleDeg[begins]).toBeGreaterThan(20);
  });

  it('lets go between ratchet strokes: torque falls to nothing, the angle stands and goes on', () => {
    const short: SimulatedModel = { ...model, hand: { ...model.hand, strokeDeg: 25 } };
    const { trace, countedDeg } = pullLoose(5, { torqueNm: 60, angleFromNm: 10 }, short);
    const peak = trace.torqueNm.indexOf(Math.max(...trace.torqueNm));
    const counting = countedDeg.findIndex((angleDeg) => angleDeg > 0);
    const slack = trace.torqueNm.findIndex((torqueNm, i) => i > counting && i < peak && torqueNm < 1);
    expect(slack).toBeGreaterThan(0);
    const after = trace.torqueNm.findIndex((torqueNm, i) => i > slack && torqueNm > 10);
    expect(new Set(trace.angleDeg.slice(slack, after)).size).toBe(1);
    expect(trace.angleDeg[peak]).toBeGreaterThan(trace.angleDeg[slack] ?? Number.NaN);
  });

  it('ends with a release tail', () => {
    const { trace } = pullLoose(5);
    expect(Math.abs(trace.torqueNm.at(-1) ?? Number.NaN)).toBeLessThan(1);
  });

  it('shows torque and angle in steps of the display', () => {
    const coarse: SimulatedModel = { ...model, wrench: { ...model.wrench, resolutionNm: 0.5, angleResolutionDeg: 1 } };
    const { trace } = pullLoose(9, TORQUE, coarse);
    expect(trace.torqueNm.every((torqueNm) => Number.isInteger(2 * torqueNm))).toBe(true);
    expect(trace.angleDeg.every(Number.isInteger)).toBe(true);
  });

  it('does not move a fastener that is tighter than the aim', () => {
    const fastener = tightenedFastener(model.joint, 4, 90);
    const pull = simulatePull({ model, aim: TORQUE, fault: 'none', seed: 4, fastener });
    expect(pull.fastener.turnedDeg).toBe(fastener.turnedDeg);
    expect(pull.shownAngleDeg).toBe(0);
    expect(pull.shownTorqueNm).toBeGreaterThan(57);
  });

  it('goes on where the last pull left the fastener', () => {
    const first = pullLoose(11, { torqueNm: 30 });
    const second = simulatePull({ model, aim: TORQUE, fault: 'none', seed: 12, fastener: first.fastener });
    expect(second.fastener.turnedDeg).toBeGreaterThan(first.fastener.turnedDeg);
    expect(second.shownTorqueNm).toBeGreaterThan(57);
  });

  it('runs free against the prevailing torque', () => {
    const locking: SimulatedModel = { ...model, joint: { ...model.joint, prevailingNm: 8 } };
    const { trace } = pullLoose(6, TORQUE, locking);
    const running = trace.torqueNm.slice(40, 60);
    expect(mean(running)).toBeCloseTo(8, 0);
  });

  it('winds up an extension, which the wrench takes for turning', () => {
    const springy: SimulatedModel = { ...model, wrench: { ...model.wrench, extensionStiffnessNmPerDeg: 14 } };
    const before = tightenedFastener(springy.joint, 8, 60);
    const pull = simulatePull({ model: springy, aim: ANGLE, fault: 'none', seed: 8, fastener: before });
    const turnedDeg = pull.fastener.turnedDeg - before.turnedDeg;
    expect(pull.shownAngleDeg - turnedDeg).toBeCloseTo(windUpDeg(pull.shownTorqueNm, 60, 14), 0);
  });

  it('gives the fastener more than it shows when an adapter reaches out', () => {
    const reaching: SimulatedModel = { ...model, wrench: { ...model.wrench, fastenerOverShown: 1.2 } };
    const [plain, longer] = [pullLoose(2), pullLoose(2, TORQUE, reaching)];
    expect(longer.shownTorqueNm).toBeCloseTo(plain.shownTorqueNm, 0);
    expect(longer.fastener.turnedDeg).toBeGreaterThan(plain.fastener.turnedDeg + 5);
  });

  it('always comes to an end with a trace that can be kept', () => {
    const aims = fc.oneof(
      fc.record({ torqueNm: fc.double({ min: 0.1, max: 400, noNaN: true }) }),
      fc.record({
        angleDeg: fc.double({ min: 1, max: 400, noNaN: true }),
        angleFromNm: fc.double({ min: 0, max: 150, noNaN: true }),
      }),
    );
    const startNm = fc.double({ min: 0, max: 150, noNaN: true });
    fc.assert(
      fc.property(aims, fc.constantFrom(...FAULTS), fc.integer(), startNm, (aim, fault, seed, torqueNm) => {
        const fastener = tightenedFastener(model.joint, seed, torqueNm);
        const pull = simulatePull({ model, aim, fault, seed, fastener });
        expect(traceSchema.safeParse(pull.trace).success).toBe(true);
        const shownNm = fault === 'turned-loose' ? -pull.shownTorqueNm : pull.shownTorqueNm;
        expect([shownNm, pull.shownAngleDeg, pull.fastestDegPerS].every((figure) => figure >= 0 && figure < 1e4)).toBe(
          true,
        );
      }),
      { numRuns: 60 },
    );
  });
});
