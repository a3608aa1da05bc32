import type { JointContent } from '../joint/joint.ts';
import type { OrderPlan } from '../joint/neighbours.ts';
import { inGroups } from '../layout/in-groups.ts';
import type { Round } from '../layout/interaction/simulate.ts';
import { simulate } from '../layout/interaction/simulate.ts';
import { jointFrom } from '../layout/interaction/source.ts';
import type { JointState } from './state.ts';

/** Clamp forces as the joint's neighbours let them be expected, from the pulls that stand. An estimate. */
export interface PredictedForces {
  /** By position, N. */
  readonly forcesN: readonly number[];
  /** Force that the whole torque is taken to bring, N. */
  readonly finalN: number;
  readonly pulls: number;
}

interface Pulled {
  readonly step: number;
  readonly bolt: number;
  readonly seq: number;
  readonly torqueNm: number;
}

/**
 * Force of each position so far: every standing pull is taken to have brought its bolt to the force of its torque, and
 * the neighbours answer. What was loosened counts as never pulled.
 *
 * @returns undefined where the joint has no planned neighbours, or was turned by angle, of which no force follows
 */
export function predictedForces(content: JointContent, state: JointState): PredictedForces | undefined {
  const { neighbours, stages } = content;
  const plan = neighbours?.plan;
  const wholeNm = plan && stages[plan.stage - 1]?.torque?.targetNm;
  if (!neighbours || !plan || wholeNm === undefined) return undefined;
  const joint = jointFrom(neighbours);
  if (!joint.ok || joint.value.count !== state.cells[0]?.length) return undefined;
  const pulled = pulledSoFar(state);
  if (!pulled) return undefined;
  const forcesN = simulate(joint.value, roundsOf(pulled, plan, wholeNm)).finalN;
  return { forcesN: [...forcesN], finalN: plan.finalN, pulls: pulled.length };
}

function pulledSoFar({ steps, cells }: JointState): readonly Pulled[] | undefined {
  const pulled: Pulled[] = [];
  for (const [step, { angle, torque }] of steps.entries()) {
    for (const [bolt, { attempts }] of cells[step]!.entries()) {
      const standing = attempts.filter((attempt) => attempt.standing === 'stands');
      if (standing.length > 0 && angle) return undefined;
      if (torque) pulled.push(...standing.map(({ seq, torqueNm }) => ({ step, bolt, seq, torqueNm })));
    }
  }
  return pulled.toSorted((a, b) => a.seq - b.seq);
}

/** The gasket counts as pressed once the second round has begun. */
function roundsOf(pulled: readonly Pulled[], plan: OrderPlan, wholeNm: number): readonly Round[] {
  const first = pulled[0]?.step;
  const later = pulled.findIndex(({ step }) => step !== first);
  const parts = later < 0 ? [pulled] : [pulled.slice(0, later), pulled.slice(later)];
  return parts.map((part) => {
    const groups = pulledTogether(part, plan);
    const all = groups.flat();
    return {
      bolts: all.map(({ bolt }) => bolt),
      groups: groups.map((group) => group.map(({ bolt }) => bolt)),
      targetsN: all.map(({ torqueNm }) => (Math.max(0, torqueNm) / wholeNm) * plan.finalN),
    };
  });
}

/**
 * Pulls of one group of the plan that follow each other, as several wrenches made them at the same time; each bolt once,
 * with its greatest torque. With one wrench each pull is by itself.
 */
function pulledTogether(pulled: readonly Pulled[], { wrenches, rounds }: OrderPlan): readonly (readonly Pulled[])[] {
  const groupOf = groupsByBolt(rounds[0]!.order, wrenches);
  const together: Pulled[][] = [];
  for (const pull of pulled) {
    const last = together.at(-1);
    const same = last?.findIndex(({ bolt }) => bolt === pull.bolt) ?? -1;
    const isTogether = wrenches > 1 && last?.[0]!.step === pull.step && groupOf[last[0].bolt] === groupOf[pull.bolt];
    if (!last || !isTogether) together.push([pull]);
    else if (same < 0) last.push(pull);
    else if (last[same]!.torqueNm < pull.torqueNm) last[same] = pull;
  }
  return together;
}

function groupsByBolt(order: readonly number[], wrenches: number): readonly number[] {
  const groupOf: number[] = [];
  for (const [index, group] of inGroups(order, wrenches).entries()) {
    for (const position of group) groupOf[position - 1] = index;
  }
  return groupOf;
}
