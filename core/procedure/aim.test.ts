import { describe, expect, it } from 'vitest';
import { aimOf } from './aim.ts';
import type { Step } from './step.ts';

const step: Step = {
  stage: 1,
  round: 1,
  kind: 'torque-and-angle',
  order: [1],
  torque: { lowerNm: 95, targetNm: 100, upperNm: 105 },
  angle: { lowerDeg: 30, targetDeg: 35, upperDeg: 40 },
  angleFromNm: 50,
  speedLimitDegPerS: undefined,
};
const wrench = { leverMm: 400 };

describe('the figure to aim at', () => {
  it('is the joint’s own without adapter and extension', () => {
    expect(aimOf(step, { wrench })).toEqual({
      ok: true,
      value: {
        torque: { lowerNm: 95, settingNm: 100, upperNm: 105 },
        angle: { lowerDeg: 30, turnDeg: 35, upperDeg: 40, windUpDeg: 0 },
        angleFromNm: 50,
        factor: 1,
      },
    });
  });

  it('counts an adapter in: 100 mm straight out on 400 mm leaves four fifths', () => {
    const aim = aimOf(step, { wrench, adapter: { lengthMm: 100, angleDeg: 0 } });
    expect(aim).toMatchObject({ ok: true, value: { torque: { settingNm: 80 }, angleFromNm: 40, factor: 0.8 } });
  });

  it('adds the wind-up of the extension to the angle: 50 N·m over 10 N·m a degree', () => {
    const aim = aimOf(step, { wrench, extension: { stiffnessNmPerDeg: 10 } });
    expect(aim).toMatchObject({ ok: true, value: { angle: { turnDeg: 40, windUpDeg: 5 } } });
  });

  it('takes off what is turned already, and never asks for less than nothing', () => {
    expect(aimOf(step, { wrench }, 20)).toMatchObject({
      ok: true,
      value: { angle: { lowerDeg: 10, turnDeg: 15, upperDeg: 20 } },
    });
    expect(aimOf(step, { wrench }, 60)).toMatchObject({ ok: true, value: { angle: { lowerDeg: 0, turnDeg: 0 } } });
  });

  it('is refused with the adapter that cannot be', () => {
    expect(aimOf(step, { wrench, adapter: { lengthMm: 500, angleDeg: 180 } })).toMatchObject({
      ok: false,
      failure: { field: 'adapterMm' },
    });
  });
});
