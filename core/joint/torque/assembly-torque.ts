import { invalid, ok, type Result } from '../../failure/failure.ts';
import type { BearingStandard } from '../../fastener/bearing-face.ts';
import type { FastenerData } from '../../fastener/fastener.ts';
import { type NutClass, readNutClass } from '../../fastener/nut-class.ts';
import { strongestClass } from '../../fastener/property-class.ts';
import { readThread } from '../../fastener/read-thread.ts';
import type { StepShown } from '../step-shown.ts';
import type { Warning } from '../warning.ts';
import { assemblySteps } from './assembly-steps.ts';
import { classDoubts, frictionDoubts, nutDoubts, utilizationDoubts } from './doubts.ts';
import { type FrictionTold, frictionTold } from './friction-told.ts';
import { type Edition, preloadAtStress, type ShankStress, shankStress } from './shank-stress.ts';
import { type Friction, meanBearingDiameterMm, torqueArms } from './thread-and-bearing.ts';
import { type Tightened, type TightenedInput, tightened } from './tightened.ts';
import { nutFactorOf, type TorqueShares, torqueForPreload } from './torque-for-preload.ts';

export interface AssemblyTorqueInput extends TightenedInput, FrictionTold {
  /** Share of the yield strength that the shank is used to. */
  readonly utilization: number;
  /** Given, it is taken instead of the utilization. */
  readonly preloadN?: number | undefined;
  readonly prevailingTorqueNm: number;
  readonly nutClass?: string | undefined;
  readonly edition: Edition;
}

export interface AssemblyTorque extends ShankStress {
  readonly preloadN: number;
  readonly torqueNm: number;
  readonly nutFactor: number;
  readonly shares: TorqueShares['shares'];
  /** Torque that twists the shank. */
  readonly shankTorqueNm: number;
  readonly bearingTorqueNm: number;
  readonly utilization?: number;
  readonly head?: BearingStandard;
  readonly bearingOuterMm: number;
  readonly holeMm: number;
  readonly edition: Edition;
  readonly warnings: readonly Warning[];
  readonly steps: readonly StepShown[];
}

/**
 * Preload and torque of a fastener that is tightened by torque.
 *
 * @returns without `preloadN` the preload at which the equivalent stress in the shank reaches `utilization` of yield
 * @source VDI 2230-1:2015, R7 and R13; ISO 16047:2005
 */
export function assemblyTorque(input: AssemblyTorqueInput): Result<AssemblyTorque> {
  const fastener = tightened(input);
  if (!fastener.ok) return fastener;
  const friction = frictionTold(input, fastener.value.geometry);
  if (!friction.ok) return friction;
  const nut = nutOf(input);
  if (!nut.ok) return nut;
  const preloadN = preloadOf(input, fastener.value, friction.value);
  if (!preloadN.ok) return preloadN;
  return ok(worked(input, fastener.value, friction.value, preloadN.value, nut.value));
}

function nutOf({ nutClass, thread }: AssemblyTorqueInput): Result<NutClass | undefined> {
  if (nutClass === undefined) return ok(undefined);
  const read = readThread(thread);
  return read.ok ? readNutClass(nutClass, read.value) : read;
}

function preloadOf(
  input: AssemblyTorqueInput,
  { data, geometry, yieldMPa }: Tightened,
  friction: Friction,
): Result<number> {
  if (input.preloadN !== undefined) {
    const { tensileLoadN = strongestLoadN(data, yieldMPa) } = data;
    if (input.preloadN <= tensileLoadN) return ok(input.preloadN);
    const what = data.propertyClass === undefined ? 'of the strongest class' : data.propertyClass;
    const message = `${data.thread} ${what} may break at ${Math.round(tensileLoadN)} N.`;
    return invalid('preloadN', message, `less than the least ultimate load, ${Math.round(tensileLoadN)} N`);
  }
  if (yieldMPa === undefined) {
    return invalid('propertyClass', 'It is missing.', 'a property class, proofStressMPa, or the preloadN itself');
  }
  const { pitchMm, threadMm } = torqueArms(geometry, friction);
  const limitMPa = input.utilization * yieldMPa;
  const preloadN = preloadAtStress(limitMPa, pitchMm + threadMm, input.prevailingTorqueNm, geometry, input.edition);
  if (preloadN !== undefined) return ok(preloadN);
  return invalid(
    'prevailingTorqueNm',
    'The prevailing torque alone twists the shank to its limit.',
    'a lower torque, N·m',
  );
}

/** Where no class is told nothing holds more than the strongest class, or steel that yields even later. */
const strongestLoadN = ({ system, majorDiameterMm, stressAreaMm2 }: FastenerData, yieldMPa = 0): number =>
  stressAreaMm2 * Math.max(strongestClass(system, majorDiameterMm).tensileStrengthMPa, yieldMPa);

function worked(
  input: AssemblyTorqueInput,
  { data, geometry, head, yieldMPa }: Tightened,
  friction: Friction,
  preloadN: number,
  nut: NutClass | undefined,
): AssemblyTorque {
  const { edition, prevailingTorqueNm } = input;
  const { torqueNm, shares } = torqueForPreload(preloadN, geometry, friction);
  const bearingTorqueNm = shares.bearing * torqueNm;
  const shankTorqueNm = torqueNm - bearingTorqueNm + prevailingTorqueNm;
  const stress = shankStress(preloadN, shankTorqueNm, geometry, edition);
  const utilization = yieldMPa === undefined ? undefined : stress.vonMisesMPa / yieldMPa;
  return {
    preloadN,
    torqueNm: torqueNm + prevailingTorqueNm,
    nutFactor: nutFactorOf(geometry, friction),
    shares,
    ...stress,
    shankTorqueNm,
    bearingTorqueNm,
    ...(utilization === undefined ? {} : { utilization }),
    ...(head === undefined ? {} : { head }),
    bearingOuterMm: geometry.bearingOuterMm,
    holeMm: geometry.holeMm,
    edition,
    warnings: [
      ...classDoubts(data),
      ...(input.nutFactor === undefined
        ? [...frictionDoubts('threadFriction', friction.thread), ...frictionDoubts('bearingFriction', friction.bearing)]
        : frictionDoubts('nutFactor', friction.thread)),
      ...nutDoubts(nut, data, preloadN),
      // Within rounding of a utilization of 1 that was asked for.
      ...utilizationDoubts(input.preloadN === undefined ? undefined : utilization),
    ],
    steps: assemblySteps({
      geometry,
      friction,
      preloadN,
      prevailingTorqueNm,
      shankTorqueNm,
      bearingDiameterMm: meanBearingDiameterMm(geometry),
      torqueNm: torqueNm + prevailingTorqueNm,
      stress,
      edition,
      ...(yieldMPa === undefined ? {} : { yieldMPa }),
      ...(input.preloadN === undefined ? { asked: input.utilization } : {}),
    }),
  };
}
