import { invalid, ok, type Result } from '../../failure/failure.ts';
import { showNumber } from '../../quantity/show-number.ts';
import type { TorqueUnit } from '../../quantity/unit.ts';
import { type JudgedFastener, type JudgedInput, judgedFastener, torqueUsing, usedAt } from './judged-fastener.ts';
import { CREDIBLE, type CredibleFriction, HIGHEST_FRICTION, type LubricationState } from './lubrication.ts';
import { type Slip, slipsOf } from './slips.ts';

/** How a torque stands to what its fastener bears, from the worst on. */
export const ASSESSMENTS = ['beyond-ultimate', 'beyond-yield', 'high', 'low', 'usual'] as const;
export type Assessment = (typeof ASSESSMENTS)[number];

export interface PlausibilityInput extends JudgedInput {
  readonly torqueNm: number;
  readonly prevailingTorqueNm: number;
  readonly typedUnit?: TorqueUnit | undefined;
  readonly lubrication: LubricationState;
  /** Friction of one's own, instead of that of the lubrication. */
  readonly lowestFriction?: number | undefined;
  readonly highestFriction?: number | undefined;
}

interface Spread {
  readonly lowest: number;
  readonly usual: number;
  readonly highest: number;
}

export interface TorquePlausibility {
  readonly assessment: Assessment;
  /** Equivalent stress in the shank over yield strength, over the credible frictions. */
  readonly utilization: Spread;
  readonly preloadLowestN: number;
  readonly preloadHighestN: number;
  readonly friction: CredibleFriction;
  /** Torque that uses 90 % of the yield strength at usual friction. */
  readonly fullTorqueNm: number;
  readonly propertyClass: string;
  readonly slips: readonly Slip[];
  readonly message: string;
}

/** Even on the best lubricant so little of the yield strength is a slip, or no final torque (common practice). */
const LOW = 0.25;

/**
 * Whether a torque makes sense on its fastener, and which slip would explain it if not.
 *
 * @returns `beyond-ultimate` when it breaks the shank even on the driest surface; `beyond-yield` when it yields at any
 *          credible friction; `high` when it yields at usual friction; `low` when it hardly loads the fastener even on the
 *          best lubricant
 */
export function torquePlausibility(input: PlausibilityInput): Result<TorquePlausibility> {
  const judged = judgedFastener(input);
  if (!judged.ok) return judged;
  const friction = credibleFriction(input);
  if (!friction.ok) return friction;
  const clampingNm = input.torqueNm - input.prevailingTorqueNm;
  if (clampingNm <= 0) {
    const message = `The torque is no more than the prevailing torque of ${input.prevailingTorqueNm} N·m.`;
    return invalid('torqueNm', message, `more than ${input.prevailingTorqueNm} N·m`);
  }
  return ok(assessed(input, clampingNm, judged.value, friction.value));
}

function credibleFriction({
  lubrication,
  lowestFriction,
  highestFriction,
}: PlausibilityInput): Result<CredibleFriction> {
  if (lowestFriction === undefined && highestFriction === undefined) return ok(CREDIBLE[lubrication]);
  const lowest = lowestFriction ?? Math.min(CREDIBLE[lubrication].lowest, highestFriction ?? 1);
  const highest = highestFriction ?? Math.max(CREDIBLE[lubrication].highest, lowest);
  if (lowest <= highest) return ok({ lowest, usual: (lowest + highest) / 2, highest });
  return invalid(
    'lowestFriction',
    `The lowest friction ${lowest} lies above the highest ${highest}.`,
    `up to ${highest}`,
  );
}

function assessed(
  input: PlausibilityInput,
  clampingNm: number,
  judged: JudgedFastener,
  friction: CredibleFriction,
): TorquePlausibility {
  const least = usedAt(clampingNm, friction.highest, judged);
  const usual = usedAt(clampingNm, friction.usual, judged);
  const most = usedAt(clampingNm, friction.lowest, judged);
  const utilization = { lowest: least.utilization, usual: usual.utilization, highest: most.utilization };
  const assessment = assess(clampingNm, utilization, judged, friction);
  const { typedUnit, lubrication } = input;
  const suspect = { torqueNm: input.torqueNm, typedUnit, lubrication, friction };
  const slips = assessment === 'usual' ? [] : slipsOf(suspect, judged);
  return {
    assessment,
    utilization,
    preloadLowestN: least.preloadN,
    preloadHighestN: most.preloadN,
    friction,
    fullTorqueNm: torqueUsing(0.9, friction.usual, judged) + input.prevailingTorqueNm,
    propertyClass: judged.className,
    slips,
    message: messageOf(assessment, utilization, judged, slips),
  };
}

function assess(
  clampingNm: number,
  utilization: Spread,
  judged: JudgedFastener,
  friction: CredibleFriction,
): Assessment {
  const driest = usedAt(clampingNm, Math.max(HIGHEST_FRICTION, friction.highest), judged);
  if (driest.utilization * judged.yieldMPa > judged.tensileMPa) return 'beyond-ultimate';
  if (utilization.lowest > 1) return 'beyond-yield';
  // Of an unknown class it is only known what the strongest bears.
  if (judged.isAssumed) return 'usual';
  if (utilization.usual > 1) return 'high';
  return utilization.highest < LOW ? 'low' : 'usual';
}

const percent = (utilization: number): string => `${showNumber(100 * utilization, 'en', { significant: 2 })} %`;

function messageOf(
  assessment: Assessment,
  { lowest, usual, highest }: Spread,
  { thread, className, isAssumed }: JudgedFastener,
  [slip]: readonly Slip[],
): string {
  const what = isAssumed ? `${thread} (were it of class ${className})` : `${thread} ${className}`;
  const range = `${percent(lowest)} to ${percent(highest)}`;
  const told: Readonly<Record<Assessment, string>> = {
    'beyond-ultimate': `This torque breaks ${what} whatever its friction.`,
    'beyond-yield': `This torque makes ${what} yield at any credible friction: ${range} of the yield strength.`,
    high: `This torque makes ${what} yield at usual friction: ${percent(usual)} of the yield strength.`,
    low: `This torque hardly loads ${what}: ${range} of the yield strength.`,
    usual: `This torque uses ${range} of the yield strength of ${what}, as friction may be.`,
  };
  return slip === undefined ? told[assessment] : `${told[assessment]} ${slip.message}`;
}
