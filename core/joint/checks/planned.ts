import type { Failure } from '../../failure/failure.ts';
import { within } from '../../failure/within.ts';
import { jointFrom } from '../../layout/interaction/source.ts';
import { countPlaces } from '../../layout/places.ts';
import type { JointContent } from '../joint.ts';
import { inEachStage, refusal } from './refusal.ts';

/** Targets by position are as many as there are positions, and only a torque can have them. */
export const positionSharesFit = ({ layout, stages }: JointContent): readonly Failure[] =>
  stages.flatMap(({ torque, rounds }, stage) =>
    rounds.flatMap(({ positionShares }, round) => {
      const path = `stages[${stage}].rounds[${round}].positionShares`;
      const count = countPlaces(layout);
      if (!positionShares) return [];
      if (!torque) return [refusal(path, 'targets by position without a torque to share', 'a window of torque')];
      if (positionShares.length === count) return [];
      return [refusal(path, `${positionShares.length} targets for ${count} positions`, `${count}, one for each`)];
    }),
  );

/** What is gone round again until nothing moves comes last, and is judged by the whole torque. */
export const closingRoundsLast = inEachStage(({ torque, angle, rounds }, path) =>
  rounds.flatMap(({ closing, share }, index) => {
    const field = `${path}.rounds[${index}].closing`;
    if (!closing) {
      const before = rounds[index - 1]?.closing;
      return before
        ? [refusal(`${path}.rounds[${index - 1}].closing`, 'a round follows the closing one', 'the last')]
        : [];
    }
    if (!torque || angle) return [refusal(field, 'only a stage of torque alone is closed so', 'a stage of torque')];
    return share === 1 ? [] : [refusal(field, 'a closing round goes to the whole torque', 'a share of 1')];
  }),
);

/** The bolts that answer to each other are those of the layout. */
export function neighboursFit({ layout, stages, neighbours }: JointContent): readonly Failure[] {
  if (!neighbours) return [];
  const joint = jointFrom(neighbours);
  if (!joint.ok) return [within('neighbours', joint.failure)];
  const count = countPlaces(layout);
  if (joint.value.count !== count) {
    const message = `the neighbours are of ${joint.value.count} bolts, the layout has ${count}`;
    return [refusal(`neighbours.${joint.value.field}`, message, `${count} bolts`)];
  }
  const { plan } = neighbours;
  if (!plan || stages[plan.stage - 1]?.torque) return [];
  return [refusal('neighbours.plan', `stage ${plan.stage} has no torque that could be planned`, 'a plan made anew')];
}
