import { readCurve, typed } from '@clampwright/core/trace';
import { check, describeSource } from '../check.ts';
import { numberFrom } from '../got.ts';
import { JOINT_RATES, RESTART, TIGHTENING } from '../published/traces.ts';

function torqueAt(deg: number): number {
  if (deg <= 90) return 4;
  if (deg <= 120) return 4 + (1.6 * (deg - 90) ** 2) / 60;
  if (deg <= 190) return 28 + 1.6 * (deg - 120);
  const beyond = deg - 190;
  return 140 + 1.6 * (0.15 * beyond + 10.2 * (1 - Math.exp(-beyond / 12)));
}

function restartAt(deg: number): number {
  if (deg <= 8) return 14 * deg;
  return deg < 8.5 ? 112 - 16 * (deg - 8) : 104 + 1.6 * (deg - 8.5);
}

const sampled = (toDeg: number, stepDeg: number, torque: (deg: number) => number) => {
  const angleDeg = Array.from({ length: Math.round(toDeg / stepDeg) + 1 }, (_, i) => i * stepDeg);
  return { angleDeg, torqueNm: angleDeg.map(torque) };
};

const curve = sampled(230, 0.5, torqueAt);
const { figures } = readCurve(typed(curve), { yieldFraction: 0.5, yieldOffsetDeg: 8, targetNm: 130 });
const restart = { ...sampled(16, 0.1, restartAt), afterDeg: RESTART.afterDeg };
const moved = (field: string) => numberFrom('first-movement', restart, field);
const nothing = Number.NaN;

const rateOf = (turnDeg: number) => {
  const linear = sampled(turnDeg, turnDeg / 600, (deg) => (100 * deg) / turnDeg);
  return readCurve(typed(linear), { yieldFraction: 0.5 }).figures.jointRate;
};

export const TRACE_SOURCES = [
  describeSource('A tightening curve as a closed formula, worked by hand', 'common practice', [
    check('elastic slope', () => figures.slopeNmPerDeg ?? nothing, { value: TIGHTENING.slope, unit: 'N·m/°' }),
    check('snug, half the slope', () => figures.snug?.angleDeg ?? nothing, { value: TIGHTENING.snugDeg, unit: '°' }),
    check('elastic origin', () => figures.elasticOriginDeg ?? nothing, { value: TIGHTENING.originDeg, unit: '°' }),
    check('origin of clamping', () => figures.clampOriginDeg ?? nothing, {
      value: TIGHTENING.clampOriginDeg,
      unit: '°',
    }),
    check('prevailing torque', () => figures.prevailingTorqueNm, { value: TIGHTENING.prevailing, unit: 'N·m' }),
    check('peak', () => figures.peakTorqueNm, { value: TIGHTENING.peak, unit: 'N·m' }),
    check('yield by gradient', () => figures.yield?.angleDeg ?? nothing, {
      value: TIGHTENING.yieldDeg,
      unit: '°',
      absolute: 1,
      because: 'the window of the slope sees the bend later by up to a degree',
    }),
    check('yield by an offset of 8°', () => figures.offsetYield?.angleDeg ?? nothing, {
      value: TIGHTENING.offsetYieldDeg,
      unit: '°',
      absolute: 1,
      because: 'points of the curve stand 1° apart',
    }),
    check('turning from 10 % of 130 N·m', () => figures.jointRate?.from10Deg ?? nothing, {
      value: TIGHTENING.from10Deg,
      unit: '°',
    }),
    check('turning from 50 %', () => figures.jointRate?.from50Deg ?? nothing, {
      value: TIGHTENING.from50Deg,
      unit: '°',
    }),
    check('the calculation tells the same slope', () => numberFrom('trace', curve, 'slopeNmPerDeg'), {
      value: TIGHTENING.slope,
      unit: 'N·m/°',
    }),
  ]),
  describeSource('A re-start as a closed formula, worked by hand', 'common practice', [
    check('where the lines meet', () => moved('torqueNm'), { value: RESTART.meet, unit: 'N·m' }),
    check('at', () => moved('angleDeg'), { value: RESTART.meetDeg, unit: '°' }),
    check('static peak', () => moved('staticPeakNm'), { value: RESTART.staticPeak, unit: 'N·m' }),
    check('1.5° after the drop', () => moved('torqueAfterNm'), { value: RESTART.after, unit: 'N·m' }),
  ]),
  describeSource(
    'ISO 5393:2017, joint rate (two secondary accounts)',
    'read',
    JOINT_RATES.flatMap(([turnDeg, kind, from10]) => [
      check(`${turnDeg}° in all`, () => rateOf(turnDeg)?.kind ?? 'none', { value: kind, unit: '' }),
      check('from 10 % to 100 %', () => rateOf(turnDeg)?.from10Deg ?? nothing, { value: from10, unit: '°' }),
    ]),
  ),
];
