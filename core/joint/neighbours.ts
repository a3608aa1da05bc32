import { z } from 'zod';
import { inGroups } from '../layout/in-groups.ts';
import { NO_GAP } from '../layout/interaction/implied-gap.ts';
import { sourceFields } from '../layout/interaction/source.ts';
import { MOST_POSITIONS } from '../layout/layout.ts';
import { MOST_SHARE, type Stage } from '../procedure/procedure.ts';

const position = z.number().int().min(1).max(MOST_POSITIONS);
const share = z.number().min(0);

/** What an order and its rounds come to on paper. */
export const plannedFiguresSchema = z.strictObject({
  /** Largest less smallest final force, over the mean. */
  spread: share,
  pulls: z.number().int().positive(),
  minutes: z.number().min(0),
  /** Of the clamp forces about the centre, at its largest on the way. */
  momentNm: z.number().min(0),
  /** How much farther the joint is then open in one place than in another, mm. */
  gapMm: z.number().min(0).optional(),
  /** Where the gap cannot be told, why. */
  whyNoGap: z.enum(NO_GAP).optional(),
  /** Where scatter of friction was drawn: 95 % of the joints end below it. */
  spread95: share.optional(),
});
export type PlannedFigures = z.infer<typeof plannedFiguresSchema>;

/** How the targets of each position were found; kept with the joint and told by the record. */
export const orderPlanSchema = z.strictObject({
  /** The stage that was planned, from 1. */
  stage: z.number().int().min(1).max(12),
  /** Clamp force that the stage's whole torque is taken to bring, N. */
  finalN: z.number().positive().max(1e9),
  /** Rounds as they were filled in: order of the pulls, share of the torque by position. */
  rounds: z
    .array(
      z.strictObject({
        order: z.array(position).min(1).max(MOST_POSITIONS),
        shares: z.array(z.number().gt(0).max(MOST_SHARE)).min(1).max(MOST_POSITIONS),
      }),
    )
    .min(1)
    .max(20),
  /** Wrenches that pull at the same time. */
  wrenches: z.number().int().min(1).max(4),
  /** Scatter of the force at one torque, 95 % within ± this share, where it was drawn. */
  frictionScatter: z.number().gt(0).max(1).optional(),
  planned: plannedFiguresSchema,
  /** What it was compared with: three star rounds at 30, 70 and 100 %. */
  compared: plannedFiguresSchema,
});
export type OrderPlan = z.infer<typeof orderPlanSchema>;

/** How the answer of the bolts to each other is known. */
export const NEIGHBOUR_SOURCES = ['dimensions', 'measured', 'learned'] as const;

/** What one bolt does to the next, and what was planned with it. */
export const neighboursSchema = z
  .strictObject({
    how: z.enum(NEIGHBOUR_SOURCES),
    ...sourceFields,
    /** Where the figures come from, in the lead's words. */
    note: z.string().max(1000),
    /** With `learned`, how good the fit is. */
    fit: z
      .strictObject({
        rows: z.number().int().positive(),
        residualN: z.number().min(0),
        neighbourUncertainty: z.number().min(0).optional(),
        decayUncertainty: z.number().min(0).optional(),
      })
      .optional(),
    plan: orderPlanSchema.optional(),
  })
  .refine(
    ({ complianceMmPerN, interaction, model }) =>
      [complianceMmPerN, interaction, model].filter((one) => one !== undefined).length === 1,
    { path: ['model'], error: 'complianceMmPerN, interaction or model, one of them' },
  );
export type Neighbours = z.infer<typeof neighboursSchema>;

/** Room for shares that went through a field of text. */
const LAST_DIGITS = 1e-9;

/** Whether a stage still has the rounds that the plan filled in; changed since then, it says nothing of them. */
export function orderPlanStands(plan: OrderPlan, stages: readonly Stage[]): boolean {
  const rounds = stages[plan.stage - 1]?.rounds ?? [];
  return plan.rounds.every(({ order, shares }, index) => {
    const round = rounds[index];
    if (round?.order.method !== 'own' || !isSame(round.order.positions, order)) return false;
    const { share: whole, positionShares = shares.map(() => whole) } = round;
    return (
      positionShares.length === shares.length &&
      positionShares.every((own, at) => Math.abs(own - shares[at]!) <= LAST_DIGITS)
    );
  });
}

/**
 * Positions that the other wrenches pull at the same time as this one, in a round of the plan.
 *
 * @param round from 1; the closing rounds behind those of the plan are pulled one by one
 */
export function pulledWith(
  plan: OrderPlan,
  stages: readonly Stage[],
  at: { readonly stage: number; readonly round: number; readonly position: number },
): readonly number[] {
  const order = plan.rounds[at.round - 1]?.order;
  if (!order || at.stage !== plan.stage || !orderPlanStands(plan, stages)) return [];
  const group = inGroups(order, plan.wrenches).find((together) => together.includes(at.position)) ?? [];
  return group.filter((position) => position !== at.position);
}

const isSame = (a: readonly number[], b: readonly number[]): boolean =>
  a.length === b.length && a.every((one, index) => one === b[index]);
