import { z } from 'zod';
import { invalid, ok, type Result } from '../../failure/failure.ts';
import type { Warning } from '../../joint/warning.ts';
import { type Remark, remark } from '../../language/mechanics/remark.ts';
import { inGroups } from '../in-groups.ts';
import { evennessOf } from '../interaction/evenness.ts';
import { atOnceSchema, byPosition, MOST_ROUNDS, ordersSchema, roundOrders } from '../interaction/rounds-request.ts';
import { simulate } from '../interaction/simulate.ts';
import { jointFrom, sourceFields } from '../interaction/source.ts';
import { MOST_POSITIONS } from '../layout.ts';
import { fallingShare } from '../rising-shares.ts';
import { type PlanScatter, scatterFields, scatterOf } from './plan-scatter.ts';
import { planSteps, type WantedSteps } from './plan-steps.ts';
import { type ToolFigures, toolFields, toolFigures } from './tool-figures.ts';

const forceN = z.number().positive().max(1e9);

/** What is asked for when rounds are planned. */
export const roundTargetsRequestSchema = z.strictObject({
  ...sourceFields,
  order: ordersSchema.describe(
    'positions from 1 in the order of the pulls, each once; one order for all rounds, or one for each',
  ),
  finalN: z
    .union([forceN, z.array(forceN).min(1).max(MOST_POSITIONS)])
    .describe('force wanted in the end, N, one figure or one for each position'),
  rounds: z.number().int().min(1).max(MOST_ROUNDS).describe('rounds, 1 to 50'),
  ceilingN: forceN.describe('no pull may aim higher, such as a share of the yield, N').optional(),
  seatingN: forceN.describe('no pull may aim lower, N').optional(),
  roundShares: z
    .array(z.number().gt(0).max(1))
    .min(1)
    .max(MOST_ROUNDS)
    .describe('share of the final force after each round, rising to 1; the gentlest when left out')
    .optional(),
  atOnce: atOnceSchema
    .default(1)
    .describe('wrenches that pull at the same time, 1 to 4; the order is taken in groups of so many'),
  ...toolFields,
  ...scatterFields,
});
export type RoundTargetsRequest = z.infer<typeof roundTargetsRequestSchema>;

export interface RoundTargets extends ToolFigures {
  readonly targetsN: readonly (readonly number[])[];
  readonly finalN: readonly number[];
  readonly meanN: number;
  readonly spread: number;
  readonly coefficientOfVariation: number;
  readonly pulls: number;
  readonly peakN: number;
  readonly warnings: readonly Warning[];
  readonly roundShares?: readonly number[];
  readonly scatter?: readonly PlanScatter[];
  readonly assumptions: readonly Remark[];
}

/** Forces for each pull that end even. Refused with the field that cannot be held. */
export function roundTargets(request: RoundTargetsRequest): Result<RoundTargets> {
  const wanted = wantedFrom(request);
  if (!wanted.ok) return wanted;
  const { joint, orders, atOnce, finalN } = wanted.value;
  const steps = planSteps(wanted.value);
  if (!steps.ok) return steps;
  const { targetsN, peakN, shares } = steps.value;
  const tools = toolFigures(request, targetsN);
  if (!tools.ok) return tools;
  const rounds = orders.map((bolts, index) => ({ bolts, targetsN: targetsN[index]!, groups: inGroups(bolts, atOnce) }));
  const ended = simulate(joint, rounds).finalN;
  const scatter = scatterOf(request, { joint, finalN, rounds, atOnce });
  return ok({
    targetsN,
    finalN: [...ended],
    ...evennessOf(ended),
    pulls: rounds.length * joint.count,
    peakN,
    warnings: passedBetweenPulls(peakN, request.ceilingN),
    ...(shares ? { roundShares: shares } : {}),
    ...tools.value,
    ...(scatter ? { scatter } : {}),
    assumptions: [
      ...joint.assumptions,
      remark('travel-in-the-end'),
      ...(atOnce > 1 ? [remark('pulled-together')] : []),
    ],
  });
}

/** Neighbours may lift a bolt above what it is pulled to. */
function passedBetweenPulls(peakN: number, ceilingN: number | undefined): readonly Warning[] {
  if (ceilingN === undefined || peakN <= ceilingN * (1 + 1e-9)) return [];
  return [{ field: 'ceilingN', ...remark('passed-ceiling', { peakN }) }];
}

function wantedFrom(request: RoundTargetsRequest): Result<WantedSteps> {
  const joint = jointFrom(request);
  if (!joint.ok) return joint;
  const { count, field } = joint.value;
  const orders = roundOrders(request.order, request.rounds, count, field);
  if (!orders.ok) return orders;
  const finalN = byPosition(request.finalN, count, 'finalN');
  if (!finalN.ok) return finalN;
  const fault = finalFault(request, finalN.value) ?? sharesFault(request);
  const { atOnce, ceilingN, seatingN, roundShares } = request;
  const told = { atOnce, ceilingN, seatingN, roundShares };
  return fault ?? ok({ joint: joint.value, orders: orders.value, finalN: finalN.value, ...told });
}

function finalFault({ finalN: told, ceilingN, seatingN }: RoundTargetsRequest, finalN: readonly number[]) {
  const named = (index: number) => (typeof told === 'number' ? 'finalN' : `finalN[${index}]`);
  const over = ceilingN === undefined ? -1 : finalN.findIndex((one) => one > ceilingN);
  if (over >= 0) {
    return invalid(named(over), `${finalN[over]} N is above the ceiling of ${ceilingN} N.`, `at most ${ceilingN} N`);
  }
  const under = seatingN === undefined ? -1 : finalN.findIndex((one) => one < seatingN);
  if (under >= 0) {
    return invalid(named(under), `${finalN[under]} N does not seat the joint.`, `at least ${seatingN} N`);
  }
  return undefined;
}

function sharesFault({ rounds, roundShares }: RoundTargetsRequest) {
  if (!roundShares) return undefined;
  if (roundShares.length !== rounds) {
    const message = `There are ${roundShares.length} shares for ${rounds} round${rounds === 1 ? '' : 's'}.`;
    return invalid('roundShares', message, `${rounds}, one for each round`);
  }
  const falls = fallingShare(roundShares);
  if (falls) return falls;
  if (roundShares.at(-1) === 1) return undefined;
  return invalid(`roundShares[${rounds - 1}]`, 'The last round goes to the final force.', '1');
}
