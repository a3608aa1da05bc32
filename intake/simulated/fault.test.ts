import { describe, expect, it } from 'vitest';
import { EXAMPLE_JOINT, EXAMPLE_TOOL } from './example.ts';
import { looseFastener, tightenedFastener } from './fastener.ts';
import type { Fault } from './fault.ts';
import type { Aim } from './model.ts';
import { modelFor } from './model-for.ts';
import { simulatePull } from './pull.ts';

const made = modelFor(EXAMPLE_JOINT, EXAMPLE_TOOL);
if (!made.ok) throw new Error('the example has a model');
const model = made.value;
const SEEDS = Array.from({ length: 40 }, (_, seed) => seed);
const TORQUE: Aim = { torqueNm: 60, angleFromNm: 20 };
const ANGLE: Aim = { angleDeg: 40, angleFromNm: 60, speedLimitDegPerS: 90 };

const onLoose = (fault: Fault) => (seed: number) =>
  simulatePull({ model, aim: TORQUE, fault, seed, fastener: looseFastener(model.joint, seed) });
const onSnug = (fault: Fault) => (seed: number) =>
  simulatePull({ model, aim: ANGLE, fault, seed, fastener: tightenedFastener(model.joint, seed, 60) });

/** Every seed compared with the sound pull of the same seed. */
const each = (pullWith: typeof onLoose, fault: Fault, seeds = SEEDS) =>
  seeds.map((seed) => [pullWith(fault)(seed), pullWith('none')(seed)] as const);

describe('faults of the simulated pull', () => {
  it('crossed-thread: torque is there before the parts are clamped', () => {
    for (const [bad, sound] of each(onLoose, 'crossed-thread', SEEDS.slice(0, 8))) {
      expect(bad.shownTorqueNm).toBeGreaterThan(55);
      expect(bad.fastener.turnedDeg).toBeLessThan(sound.fastener.turnedDeg - 10);
    }
  });

  it('already-tight: the torque is there within a few degrees', () => {
    for (const [bad, sound] of each(onLoose, 'already-tight')) {
      expect(bad.shownTorqueNm).toBeGreaterThan(55);
      expect(bad.shownAngleDeg).toBeLessThan(Math.min(8, sound.shownAngleDeg / 2));
    }
  });

  it('stripped-thread: torque peaks far below the aim and falls while the fastener turns on', () => {
    for (const [bad, sound] of each(onLoose, 'stripped-thread')) {
      expect(bad.shownTorqueNm).toBeLessThan(0.75 * sound.shownTorqueNm);
      expect(bad.fastener.turnedDeg).toBeGreaterThan(sound.fastener.turnedDeg + 60);
    }
  });

  it('yielded: the angle brings less torque than it should', () => {
    for (const [bad, sound] of each(onSnug, 'yielded')) {
      expect(Math.abs(bad.shownAngleDeg - 40)).toBeLessThan(5);
      expect(bad.shownTorqueNm).toBeLessThan(0.9 * sound.shownTorqueNm);
    }
  });

  it('pulled-too-fast: the aim is met, faster than the limit', () => {
    for (const [bad, sound] of each(onSnug, 'pulled-too-fast')) {
      expect(bad.fastestDegPerS).toBeGreaterThan(90);
      expect(sound.fastestDegPerS).toBeLessThan(90);
    }
  });

  it('stopped-short: torque and angle stay below the aim', () => {
    expect(SEEDS.every((seed) => onLoose('stopped-short')(seed).shownTorqueNm < 0.9 * 60)).toBe(true);
    expect(SEEDS.every((seed) => onSnug('stopped-short')(seed).shownAngleDeg < 0.95 * 40)).toBe(true);
  });

  it('over-run: torque and angle go beyond the aim', () => {
    expect(SEEDS.every((seed) => onLoose('over-run')(seed).shownTorqueNm > 1.1 * 60)).toBe(true);
    expect(SEEDS.every((seed) => onSnug('over-run')(seed).shownAngleDeg > 1.08 * 40)).toBe(true);
  });
});
