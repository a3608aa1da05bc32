import { invalid, ok, type Result } from '../../failure/failure.ts';
import { profileOf } from '../../fastener/profile.ts';
import type { Remark } from '../../language/mechanics/remark.ts';
import { windUpDeg } from '../../procedure/wind-up.ts';
import type { StepShown } from '../step-shown.ts';
import type { Warning } from '../warning.ts';
import { angleAssumptions, angleDoubts } from './angle-remarks.ts';
import { angleSteps } from './angle-steps.ts';
import { boltAloneLengthMm, boltAloneTurnDeg, usualLengths } from './bolt-alone.ts';
import { type CodeCheck, codeChecks } from './code-turns.ts';
import { type CurvePoint, expectedCurve } from './curve.ts';
import type { TighteningAngleRequest } from './request.ts';
import { stayingMm, travelMm, turnDeg, ultimatePreloadN, yieldPreloadN } from './stretch.ts';
import { targetOf } from './target-of.ts';
import { tighteningOf } from './tightening.ts';
import { toolNmPerDeg } from './tool-wind-up.ts';
import { type TorqueWindow, torqueWindow } from './torque-window.ts';
import { preloadAfterTurnN, stretchOf, torqueNm } from './turned-joint.ts';
import type { Worked } from './worked.ts';

export interface TighteningAngle {
  /** At the fastener, from snug. */
  readonly angleDeg: number;
  readonly snugPreloadN: number;
  readonly preloadN: number;
  /** Preload that one degree brings while all is elastic. */
  readonly slopeNPerDeg: number;
  /** Turn that would stretch the bolt alone, over rigid parts; where the joint is described. */
  readonly boltAloneAngleDeg?: number;
  readonly isPastYield: boolean;
  readonly yieldPreloadN?: number;
  readonly yieldAngleDeg?: number;
  readonly ultimatePreloadN?: number;
  /** Stretch of the bolt that stays. */
  readonly stayingMm: number;
  readonly snugTorqueNm?: number;
  readonly finalTorqueNm?: number;
  readonly torqueWindow?: TorqueWindow;
  /** How far the tool twists between snug and end, and what the wrench must then turn. */
  readonly windUpDeg?: number;
  readonly wrenchAngleDeg?: number;
  readonly codes: readonly CodeCheck[];
  readonly curve: readonly CurvePoint[];
  readonly assumptions: readonly Remark[];
  readonly warnings: readonly Warning[];
  readonly steps: readonly StepShown[];
}

/**
 * Angle from snug to a preload, or the preload after an angle; elastic and past yield.
 *
 * @returns refused with field and reason
 * @source θ = 360·(F − F_s)·(δ_S + δ_P)/P: geometry of the thread; past yield a law of the steel that is an assumption
 */
export function tighteningAngleOf(request: TighteningAngleRequest): Result<TighteningAngle> {
  const tightening = tighteningOf(request);
  if (!tightening.ok) return tightening;
  const tool = toolNmPerDeg(request.toolParts);
  if (!tool.ok) return tool;
  const range = frictionRange(request);
  if (!range.ok) return range;
  const { joint, friction, snug } = tightening.value;
  const stretch = stretchOf(joint, friction?.thread);
  const target = targetOf(request, tightening.value, stretch);
  if (!target.ok) return target;
  const window = range.value && torqueWindow(joint, snug, target.value.angleDeg, range.value);
  return ok(told({ ...target.value, request, tightening: tightening.value, stretch, window }, tool.value));
}

function frictionRange({ frictionLow, frictionHigh }: TighteningAngleRequest) {
  if (frictionLow === undefined && frictionHigh === undefined) return ok(undefined);
  if (frictionLow === undefined) return invalid('frictionLow', 'It is missing beside the upper end.', 'above 0 to 1');
  if (frictionHigh === undefined) return invalid('frictionHigh', 'It is missing beside the lower end.', 'above 0 to 1');
  if (frictionLow > frictionHigh)
    return invalid('frictionLow', 'It is above the upper end.', `at most ${frictionHigh}`);
  return ok({ lowest: frictionLow, highest: frictionHigh });
}

function told(worked: Worked, toolStiffness: number | undefined): TighteningAngle {
  const { angleDeg, preloadN, tightening, stretch, window } = worked;
  const { joint, snugPreloadN } = tightening;
  return {
    angleDeg,
    snugPreloadN,
    preloadN,
    slopeNPerDeg: joint.geometry.pitchMm / 360 / joint.elasticMmPerN,
    ...boltAlone(worked),
    isPastYield: preloadN > yieldPreloadN(stretch),
    ...limits(worked),
    stayingMm: stayingMm(stretch, preloadN),
    ...torques(worked, toolStiffness),
    ...(window === undefined ? {} : { torqueWindow: window }),
    codes: checksOf(worked),
    curve: curveOf(worked),
    assumptions: angleAssumptions(worked),
    warnings: angleDoubts(worked),
    steps: angleSteps(worked),
  };
}

function boltAlone({ request, tightening, preloadN }: Worked) {
  const { thread, springs, snugPreloadN } = tightening;
  if (request.layers === undefined || springs.gripMm === undefined) return {};
  const { stressAreaMm2 } = profileOf(thread);
  const shankMm = request.shank.reduce((sum, { lengthMm }) => sum + lengthMm, 0);
  const lengths = usualLengths(thread.majorDiameterMm, stressAreaMm2, shankMm, springs.gripMm);
  const stressMPa = (preloadN - snugPreloadN) / stressAreaMm2;
  const turn = boltAloneTurnDeg(stressMPa, boltAloneLengthMm(lengths), request.boltModulusMPa, thread.pitchMm);
  return { boltAloneAngleDeg: turn };
}

function limits({ tightening, stretch }: Worked) {
  if (tightening.strength === undefined || stretch.sections.length === 0) return {};
  const yieldN = yieldPreloadN(stretch);
  const turnedMm = travelMm(stretch, yieldN) - travelMm(stretch, tightening.snugPreloadN);
  return {
    yieldPreloadN: yieldN,
    yieldAngleDeg: turnDeg(turnedMm, tightening.joint.geometry.pitchMm),
    ultimatePreloadN: ultimatePreloadN(stretch),
  };
}

function torques({ tightening, preloadN, angleDeg }: Worked, toolStiffness: number | undefined) {
  const { joint, friction, snugPreloadN } = tightening;
  if (friction === undefined) return {};
  const snugTorqueNm = torqueNm(joint, friction, snugPreloadN);
  const finalTorqueNm = torqueNm(joint, friction, preloadN);
  if (toolStiffness === undefined) return { snugTorqueNm, finalTorqueNm };
  const twistedDeg = windUpDeg(finalTorqueNm, snugTorqueNm, toolStiffness);
  return { snugTorqueNm, finalTorqueNm, windUpDeg: twistedDeg, wrenchAngleDeg: angleDeg + twistedDeg };
}

function checksOf({ request, tightening, stretch }: Worked): readonly CodeCheck[] {
  const { thread, springs, strength, joint, snugPreloadN } = tightening;
  const bolt = {
    boltMm: thread.majorDiameterMm,
    boltLengthMm: request.boltLengthMm,
    gripMm: springs.gripMm,
    sloped: request.slopedFaces,
    stressAreaMm2: profileOf(thread).stressAreaMm2,
    tensileMPa: strength?.tensileMPa,
    className: strength?.className,
  };
  return codeChecks(bolt, (angleDeg) => preloadAfterTurnN(stretch, joint.geometry.pitchMm, snugPreloadN, angleDeg));
}

/** The curve goes a little beyond the target, so that it is seen where it leads. */
const BEYOND = 1.1;

function curveOf({ tightening, stretch, preloadN, angleDeg }: Worked): readonly CurvePoint[] {
  const { joint, friction, snugPreloadN } = tightening;
  const endN = preloadAfterTurnN(stretch, joint.geometry.pitchMm, snugPreloadN, BEYOND * angleDeg);
  const preloads = { snugN: snugPreloadN, endN: Math.max(endN, preloadN), cornerN: yieldPreloadN(stretch) };
  return expectedCurve(joint, stretch, friction, preloads);
}
