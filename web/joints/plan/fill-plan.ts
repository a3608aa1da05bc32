import type { OrderPlan } from '@clampwright/core/joint';
import type { Language } from '@clampwright/core/quantity';
import { asTyped } from '../form/as-typed.ts';
import { blankRound } from '../form/blank.ts';
import type { JointForm, RoundForm } from '../form/joint-form.ts';
import type { ClosingWanted, PlanWanted } from './plan-form.ts';
import type { PlayedPlan } from './play-plan.ts';

interface Filling {
  readonly stage: number;
  readonly wanted: PlanWanted;
  readonly planned: PlayedPlan;
  readonly compared: PlayedPlan;
  readonly closing: ClosingWanted;
  readonly spread95?: number | undefined;
}

/** The plan as the rounds of a stage, and beside them where they come from. */
export function withPlan(form: JointForm, filling: Filling, language: Language): JointForm {
  const { stage, wanted, planned, compared, closing, spread95 } = filling;
  const plan: OrderPlan = {
    stage,
    finalN: wanted.finalN,
    rounds: planned.rounds.map(({ order, shares }) => ({ order: [...order], shares: [...shares] })),
    wrenches: wanted.wrenches,
    ...(wanted.frictionScatter === undefined ? {} : { frictionScatter: wanted.frictionScatter }),
    planned: { ...planned.figures, ...(spread95 === undefined ? {} : { spread95 }) },
    compared: compared.figures,
  };
  const rounds = [...plannedRounds(wanted, planned, language), ...closingRounds(planned, closing, language)];
  const stages = form.stages.map((one, index) => (index === stage - 1 ? { ...one, rounds } : one));
  return { ...form, stages, neighbours: { ...form.neighbours, plan } };
}

const plannedRounds = ({ targets }: PlanWanted, { rounds }: PlayedPlan, language: Language): readonly RoundForm[] =>
  rounds.map(({ share, order, shares }, index) => ({
    ...blankRound(index + 1),
    sharePercent: asTyped(share * 100, language),
    method: 'own',
    positions: order,
    positionShares: targets === 'planned' ? shares : undefined,
  }));

const closingRounds = (
  { rounds }: PlayedPlan,
  { rounds: count, stillDeg }: ClosingWanted,
  language: Language,
): readonly RoundForm[] =>
  Array.from({ length: count }, (_, index) => ({
    ...blankRound(rounds.length + index + 1),
    isClosing: true,
    stillDeg: asTyped(stillDeg, language),
  }));
