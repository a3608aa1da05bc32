import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EXAMPLE_JOINT, EXAMPLE_TOOL } from './example.ts';
import { angleAtTorque, looseFastener, torqueInMotionNm } from './fastener.ts';
import { modelFor } from './model-for.ts';
import { carriedPreloadN, preloadPerDegree, torquePerPreloadM } from './preload.ts';

const model = modelFor(EXAMPLE_JOINT, EXAMPLE_TOOL);
if (!model.ok) throw new Error('the example has a model');
const { joint } = model.value;
const turned = fc.double({ min: -50, max: 400, noNaN: true });
const sound = { yieldPreloadN: joint.yieldPreloadN, shearPreloadN: undefined };

describe('torquePerPreloadM', () => {
  // VDI 2230:2001, table of fine threads, as printed in a catalogue (read); ring from ISO 4014 face and ISO 273 medium hole.
  it.each([
    ['M12x1.25 10.9', 1.25, 11.188, (16.63 + 13.5) / 2, 0.12, 70.5, 133],
    ['M24x2 8.8', 2, 22.701, (33.61 + 26) / 2, 0.14, 204, 865],
  ] as const)(
    'agrees with the published torque of %s',
    (_, pitchMm, pitchDiameterMm, meanBearingDiameterMm, friction, preloadKn, torqueNm) => {
      const lever = torquePerPreloadM({ pitchMm, pitchDiameterMm, meanBearingDiameterMm }, friction, friction);
      expect(Math.abs(lever * preloadKn * 1000 - torqueNm) / torqueNm).toBeLessThan(0.011);
    },
  );
});

describe('carriedPreloadN', () => {
  it('carries nothing before the parts touch', () => {
    expect(carriedPreloadN(joint, sound, -1)).toBe(0);
  });

  it('never falls while the thread holds', () => {
    fc.assert(
      fc.property(turned, turned, (a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        expect(carriedPreloadN(joint, sound, more)).toBeGreaterThanOrEqual(carriedPreloadN(joint, sound, less));
      }),
    );
  });

  it('gains K P/360 a degree between alignment and yield', () => {
    const gained = carriedPreloadN(joint, sound, 50) - carriedPreloadN(joint, sound, 40);
    expect(gained).toBeCloseTo((10 * joint.stiffnessNPerMm * joint.pitchMm) / 360, 6);
  });

  it('joins its pieces without a step', () => {
    const slope = preloadPerDegree(joint);
    fc.assert(
      fc.property(turned, (at) => {
        expect(carriedPreloadN(joint, sound, at + 1e-3) - carriedPreloadN(joint, sound, at)).toBeLessThanOrEqual(
          slope * 1.001e-3,
        );
      }),
    );
  });

  it('turns softer beyond yield, down to the plastic share of the slope', () => {
    const gained = carriedPreloadN(joint, sound, 401) - carriedPreloadN(joint, sound, 400);
    expect(gained / preloadPerDegree(joint)).toBeCloseTo(joint.plasticShare, 2);
  });

  it('lets go of the load when the thread shears', () => {
    const sheared = { ...sound, shearPreloadN: 20_000 };
    expect(carriedPreloadN(joint, sheared, 200)).toBeLessThan(20_000 / 2);
  });
});

describe('angleAtTorque', () => {
  it('finds where a torque is reached', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 140, noNaN: true }), fc.nat(), (torqueNm, seed) => {
        const fastener = looseFastener(joint, seed);
        const at = angleAtTorque(joint, fastener, torqueNm);
        expect(torqueInMotionNm(joint, fastener, at)).toBeCloseTo(torqueNm, 6);
      }),
    );
  });
});
