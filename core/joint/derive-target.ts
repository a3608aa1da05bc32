import { ok, type Result } from '../failure/failure.ts';
import type { OwnBolt, OwnLubricant, OwnMaterial } from '../fastener/own-row.ts';
import { convertTorque } from '../quantity/convert.ts';
import type { TorqueUnit } from '../quantity/unit.ts';
import type { Derivation } from './derivation.ts';
import { threadTold } from './joint.ts';
import { shown } from './step-shown.ts';
import { type AssemblyTorque, assemblyTorque } from './torque/assembly-torque.ts';

/** What a lead tells when the maker's figure is missing. */
export interface TargetWanted {
  /** Designation; with an own bolt, that of its row. */
  readonly thread: string;
  readonly ownBolt: OwnBolt | undefined;
  /** One of these. */
  readonly propertyClass: string | undefined;
  readonly ownMaterial: OwnMaterial | undefined;
  /** The lowest that are credible: more friction takes preload away, less would overload the fastener. */
  readonly threadFriction: number;
  readonly bearingFriction: number;
  /** The workshop's own row that the friction was taken from. */
  readonly ownLubricant: OwnLubricant | undefined;
  readonly utilization: number;
  readonly tighteningFactor: number;
  /** Half width of the window, percent of the target. */
  readonly plusMinusPercent: number;
  /** In which the target is rounded and typed. */
  readonly torqueUnit: TorqueUnit;
  /** Where friction and tightening factor were taken from. */
  readonly sources: readonly string[];
}

export interface DerivedTarget {
  readonly derivation: Derivation;
  /** Target in the unit wanted, rounded down to three digits. */
  readonly target: number;
}

const DIGITS = 3;

/**
 * Works out the target of a torque stage, an estimate where the maker gives none, and keeps how.
 *
 * @returns refused with the field that cannot be: `thread`, `propertyClass` and those of `assemblyTorque`
 * @source VDI 2230-1:2015: assembly torque at the lowest friction, least preload F_Mmin = F_Mmax/α_A
 */
export function deriveTarget(wanted: TargetWanted): Result<DerivedTarget> {
  const { thread, ownBolt, propertyClass, ownMaterial, threadFriction, bearingFriction, utilization } = wanted;
  const worked = assemblyTorque({
    thread: threadTold({ thread, ownBolt }),
    ...(ownMaterial ? { proofStressMPa: ownMaterial.yieldStrengthMPa } : { propertyClass }),
    threadFriction,
    bearingFriction,
    utilization,
    prevailingTorqueNm: 0,
    edition: 'VDI 2230:2001',
  });
  if (!worked.ok) return worked;
  const target = roundedDown(convertTorque(worked.value.torqueNm, 'N·m', wanted.torqueUnit));
  return ok({ derivation: derivationOf(wanted, worked.value, target), target });
}

function derivationOf(wanted: TargetWanted, worked: AssemblyTorque, target: number): Derivation {
  const { thread, ownBolt, propertyClass, ownMaterial, ownLubricant, tighteningFactor } = wanted;
  const { threadFriction, bearingFriction, utilization } = wanted;
  const filled = windowOf(target, wanted);
  const leastPreloadN = worked.preloadN / tighteningFactor;
  return {
    calculation: 'assembly-torque',
    input: {
      thread,
      ...(ownMaterial ? { yieldStrengthMPa: ownMaterial.yieldStrengthMPa } : {}),
      ...(ownMaterial || propertyClass === undefined ? {} : { propertyClass }),
      threadFriction,
      bearingFriction,
      utilization,
      tighteningFactor,
    },
    output: {
      torqueNm: worked.torqueNm,
      preloadN: worked.preloadN,
      leastPreloadN,
      nutFactor: worked.nutFactor,
      shares: worked.shares,
      utilizationAtUpper: (utilization * filled.upperNm) / worked.torqueNm,
    },
    filled,
    steps: [...worked.steps, leastPreloadStep(worked.preloadN, tighteningFactor, leastPreloadN)],
    ...(worked.warnings.length === 0 ? {} : { warnings: [...worked.warnings] }),
    sources: [...wanted.sources],
    ownRows: [ownBolt, ownMaterial, ownLubricant].filter((row) => row !== undefined),
  };
}

function windowOf(target: number, { plusMinusPercent, torqueUnit }: TargetWanted): Derivation['filled'] {
  const half = (target * plusMinusPercent) / 100;
  const inNm = (torque: number) => convertTorque(torque, torqueUnit, 'N·m');
  return { lowerNm: inNm(target - half), targetNm: inNm(target), upperNm: inNm(target + half) };
}

const leastPreloadStep = (preloadN: number, factor: number, leastPreloadN: number) =>
  shown({
    symbol: 'F_Mmin',
    formula: 'F_M/α_A',
    numbers: { F_M: preloadN, α_A: factor },
    value: leastPreloadN,
    unit: 'N',
    source: 'VDI 2230-1:2015, tightening factor',
  });

/** Never above what was worked out. */
function roundedDown(value: number): number {
  const step = 10 ** (Math.floor(Math.log10(value)) - DIGITS + 1);
  return Number((Math.floor(value / step) * step).toPrecision(DIGITS));
}
