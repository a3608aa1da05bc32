import { ok, parse, type Result } from '@clampwright/core/failure';
import type { PlannedFigures } from '@clampwright/core/joint';
import {
  elasticInteraction,
  impliedGap,
  inGroups,
  type Layout,
  momentNmm,
  type OrderAnswer,
  orderOf,
  orderRequestSchema,
  type Place,
  places,
  roundTargets,
  roundTargetsRequestSchema,
} from '@clampwright/core/layout';
import type { PlanWanted } from './plan-form.ts';

/** One round as it is filled into a stage. */
export interface PlanRound {
  /** Share of the final force that the round ends at. */
  readonly share: number;
  readonly order: readonly number[];
  /** Share of the whole torque by position. */
  readonly shares: readonly number[];
}

/** The forces after one pull, or after one pull of each wrench. */
export interface PulledStep {
  readonly round: number;
  readonly positions: readonly number[];
  readonly forcesN: readonly number[];
}

/** Rounds played through. */
export interface PlayedPlan {
  readonly rounds: readonly PlanRound[];
  readonly steps: readonly PulledStep[];
  readonly finalN: readonly number[];
  readonly figures: PlannedFigures;
}

/** Shares of the whole are told to the hundredth of a percent, as they are kept and set. */
const asSet = (share: number): number => Math.round(share * 1e4) / 1e4;

/** The plan that is wanted, played through; refused in the words of the core where it cannot be. */
export function playWanted(wanted: PlanWanted): Result<PlayedPlan> {
  const order = orderFor(wanted);
  if (!order.ok) return order;
  const rounds = roundsFor(wanted, order.value);
  return rounds.ok ? played(wanted, rounds.value) : rounds;
}

/** Three star rounds at 30, 70 and 100 %, as common practice has them; for comparison. */
export function playStar(wanted: PlanWanted): Result<PlayedPlan> {
  const order = orderFor({ ...wanted, method: 'star' });
  return order.ok ? played(wanted, sharedRounds([0.3, 0.7, 1], order.value)) : order;
}

function orderFor({ layout, method, positions, wrenches }: PlanWanted): Result<readonly number[]> {
  if (method === 'own' || method === 'searched') return ok(positions);
  const answer = orderAsked({ ...asRequest(layout), method, wrenches });
  return answer.ok ? ok(answer.value.order) : answer;
}

/** A layout on its way to what it is to be, such as one bolt while 12 is typed, has no order; the answer says why. */
function orderAsked(request: unknown): Result<OrderAnswer> {
  const read = parse(orderRequestSchema, request);
  return read.ok ? orderOf(read.value) : read;
}

const sharedRounds = (shares: readonly number[], order: readonly number[]): readonly PlanRound[] =>
  shares.map((share) => ({ share, order, shares: order.map(() => share) }));

function roundsFor(wanted: PlanWanted, order: readonly number[]): Result<readonly PlanRound[]> {
  if (wanted.targets === 'shares') return ok(sharedRounds(wanted.shares, order));
  const { neighbours, finalN, rounds, wrenches, ceilingN, seatingN } = wanted;
  const request = parse(roundTargetsRequestSchema, {
    ...sourceIn(neighbours),
    order,
    finalN,
    rounds,
    atOnce: wrenches,
    ...(ceilingN === undefined ? {} : { ceilingN }),
    ...(seatingN === undefined ? {} : { seatingN }),
  });
  if (!request.ok) return request;
  const planned = roundTargets(request.value);
  if (!planned.ok) return planned;
  const { targetsN, roundShares } = planned.value;
  return ok(
    targetsN.map((targets, index) => {
      const shares = order.map(() => 0);
      for (const [pull, position] of order.entries()) shares[position - 1] = asSet((targets[pull] ?? 0) / finalN);
      const isLast = index === targetsN.length - 1;
      const share = isLast ? 1 : asSet(roundShares?.[index] ?? (index + 1) / targetsN.length);
      return { share, order, shares };
    }),
  );
}

/** What the core takes of kept neighbours. */
export const sourceIn = ({
  model,
  interaction,
  complianceMmPerN,
}: PlanWanted['neighbours']): Pick<PlanWanted['neighbours'], 'model' | 'interaction' | 'complianceMmPerN'> => ({
  ...(model ? { model } : {}),
  ...(interaction ? { interaction } : {}),
  ...(complianceMmPerN ? { complianceMmPerN } : {}),
});

function played(wanted: PlanWanted, rounds: readonly PlanRound[]): Result<PlayedPlan> {
  const { neighbours, finalN, wrenches } = wanted;
  const answer = elasticInteraction({
    ...sourceIn(neighbours),
    order: rounds.map(({ order }) => [...order]),
    targetsN: rounds.map(({ order, shares }) => order.map((position) => (shares[position - 1] ?? 1) * finalN)),
    atOnce: wrenches,
    everyPull: true,
  });
  if (!answer.ok) return answer;
  const groups = rounds.flatMap(({ order }, round) =>
    inGroups(order, wrenches).map((positions) => ({ round, positions })),
  );
  const steps = groups.map(({ round, positions }, index) => ({
    round: round + 1,
    positions,
    forcesN: answer.value.afterEachPull?.[index] ?? [],
  }));
  const figures = {
    spread: answer.value.spread,
    pulls: answer.value.pulls,
    minutes: minutesFor(wanted, rounds),
    ...imbalanceOf(wanted, steps),
  };
  return ok({ rounds, steps, finalN: answer.value.finalN, figures });
}

function minutesFor({ layout, finalN, wrenches, secondsPerPull }: PlanWanted, rounds: readonly PlanRound[]): number {
  const answer = orderAsked({
    ...asRequest(layout),
    method: 'own',
    positions: rounds[0]?.order ?? [],
    wrenches,
    roundShares: rounds.map(() => 1),
    targetN: finalN,
    secondsPerPull,
  });
  return answer.ok ? (answer.value.quality?.minutes ?? 0) : 0;
}

/** Of the clamp forces about the middle of all positions, the largest on the way, and the gap it opens. */
function imbalanceOf({ layout, neighbours }: PlanWanted, steps: readonly PulledStep[]): Imbalance {
  const all = places(layout);
  const worst = mostUneven(all, steps);
  const gap = impliedGap(sourceIn(neighbours), all, worst);
  return { momentNm: Math.hypot(...momentNmm(all, worst)) / 1000, ...gap };
}

type Imbalance = Pick<PlannedFigures, 'momentNm' | 'gapMm' | 'whyNoGap'>;

/** The forces while their moment about the middle is largest; none where they are balanced all the way. */
function mostUneven(all: readonly Place[], steps: readonly PulledStep[]): readonly number[] {
  let [worst, largest]: [readonly number[], number] = [all.map(() => 0), 0];
  for (const { forcesN } of steps) {
    const moment = Math.hypot(...momentNmm(all, forcesN));
    if (moment > largest) [worst, largest] = [forcesN, moment];
  }
  return worst;
}

/** A layout in the words of the request for an order. */
function asRequest(layout: Layout): Readonly<Record<string, unknown>> {
  switch (layout.kind) {
    case 'circle':
      return { layout: 'circle', count: layout.count, diameterMm: layout.diameterMm };
    case 'line':
      return { layout: 'line', count: layout.count, pitchXMm: layout.pitchMm };
    case 'points':
      return { layout: 'points', points: layout.points };
    case 'rectangle': {
      const { kind: _, ...rest } = layout;
      return { layout: 'rectangle', ...rest };
    }
  }
}
