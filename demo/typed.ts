import type { AngleWindow, TorqueWindow } from '@clampwright/core/procedure';

/** Torque window written as target and percent, as a manual prints it. */
export function torquePercent(targetNm: number, percent: number): TorqueWindow {
  return {
    lowerNm: targetNm * (1 - percent / 100),
    targetNm,
    upperNm: targetNm * (1 + percent / 100),
    typed: { form: 'percent', target: String(targetNm), percent: String(percent), unit: 'N·m' },
  };
}

/** Torque window written as two limits; the target lies between them. */
export function torqueLimits(lowerNm: number, upperNm: number): TorqueWindow {
  return {
    lowerNm,
    targetNm: (lowerNm + upperNm) / 2,
    upperNm,
    typed: { form: 'limits', lower: String(lowerNm), upper: String(upperNm), unit: 'N·m' },
  };
}

/** Angle window written as target and plus-minus. */
export function anglePlusMinus(targetDeg: number, plusMinusDeg: number): AngleWindow {
  return {
    lowerDeg: targetDeg - plusMinusDeg,
    targetDeg,
    upperDeg: targetDeg + plusMinusDeg,
    typed: { form: 'plus-minus', target: String(targetDeg), plusMinus: String(plusMinusDeg), unit: 'deg' },
  };
}
