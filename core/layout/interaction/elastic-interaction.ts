import { z } from 'zod';
import { ok, type Result } from '../../failure/failure.ts';
import type { Remark } from '../../language/mechanics/remark.ts';
import { inGroups } from '../in-groups.ts';
import { MOST_POSITIONS } from '../layout.ts';
import { evennessOf } from './evenness.ts';
import { interactionOf } from './from-interaction.ts';
import { atOnceSchema, byPosition, ordersSchema, roundOrders, roundTargets, targetsSchema } from './rounds-request.ts';
import { simulate } from './simulate.ts';
import { jointFrom, sourceFields } from './source.ts';
import { rowsOf } from './square-matrix.ts';

const startN = z.number().min(0).max(1e9);

/** What is asked for when a joint's rounds are played through. */
export const elasticInteractionRequestSchema = z.strictObject({
  ...sourceFields,
  order: ordersSchema.describe(
    'positions from 1 in the order of the pulls, each once; one order for all rounds, or one for each',
  ),
  targetsN: targetsSchema.describe('for each round the force aimed at, N: one figure, or one for each pull in order'),
  startN: z
    .union([startN, z.array(startN).min(1).max(MOST_POSITIONS)])
    .describe('forces to begin with, N, one figure or one for each position; 0 was never pulled')
    .optional(),
  atOnce: atOnceSchema
    .default(1)
    .describe('wrenches that pull at the same time, 1 to 4; the order is taken in groups of so many'),
  everyPull: z.boolean().default(true).describe('tell the forces after each pull'),
});
export type ElasticInteractionRequest = z.infer<typeof elasticInteractionRequestSchema>;

export interface ElasticInteraction {
  readonly afterEachPull?: readonly (readonly number[])[];
  readonly finalN: readonly number[];
  readonly meanN: number;
  readonly spread: number;
  readonly coefficientOfVariation: number;
  readonly minOverTarget: number;
  readonly pulls: number;
  readonly idlePulls: number;
  readonly afterEachRound: readonly RoundEnd[];
  readonly interaction: readonly (readonly number[])[];
  readonly assumptions: readonly Remark[];
}

export interface RoundEnd {
  readonly round: number;
  readonly meanN: number;
  readonly leastN: number;
  readonly mostN: number;
  readonly spread: number;
  readonly coefficientOfVariation: number;
}

/** Plays rounds of pulls through, exactly. Refused with the field that cannot be. */
export function elasticInteraction(request: ElasticInteractionRequest): Result<ElasticInteraction> {
  const joint = jointFrom(request);
  if (!joint.ok) return joint;
  const { count, field } = joint.value;
  const orders = roundOrders(request.order, request.targetsN.length, count, field);
  if (!orders.ok) return orders;
  const targets = roundTargets(request.targetsN, count);
  if (!targets.ok) return targets;
  const start = request.startN === undefined ? undefined : byPosition(request.startN, count, 'startN');
  if (start && !start.ok) return start;
  const rounds = orders.value.map((bolts, index) => ({
    bolts,
    targetsN: targets.value[index]!,
    groups: inGroups(bolts, request.atOnce),
  }));
  const steps = Math.ceil(count / request.atOnce);
  const seen: number[][] = [];
  const ends: RoundEnd[] = [];
  const { finalN, idlePulls } = simulate(joint.value, rounds, start?.value, (forcesN, step) => {
    if (request.everyPull) seen.push([...forcesN]);
    if ((step + 1) % steps === 0) ends.push(roundEnd(ends.length + 1, forcesN));
  });
  const { bolts, targetsN } = rounds.at(-1)!;
  return ok({
    finalN: [...finalN],
    ...evennessOf(finalN),
    minOverTarget: Math.min(...bolts.map((bolt, pull) => finalN[bolt]! / targetsN[pull]!)),
    pulls: count * rounds.length,
    idlePulls,
    afterEachRound: ends,
    ...(request.everyPull ? { afterEachPull: seen } : {}),
    interaction: rowsOf(interactionOf(joint.value.later ?? joint.value.first)),
    assumptions: joint.value.assumptions,
  });
}

function roundEnd(round: number, forcesN: Float64Array): RoundEnd {
  const { meanN, spread, coefficientOfVariation } = evennessOf(forcesN);
  return { round, meanN, leastN: Math.min(...forcesN), mostN: Math.max(...forcesN), spread, coefficientOfVariation };
}
