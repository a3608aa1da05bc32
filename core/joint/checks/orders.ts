import type { Failure } from '../../failure/failure.ts';
import { within } from '../../failure/within.ts';
import { positionsInOrder } from '../../layout/positions-in-order.ts';
import type { JointContent } from '../joint.ts';

export const ordersArePermutations = ({ layout, stages }: JointContent): readonly Failure[] =>
  stages.flatMap(({ rounds }, stageIndex) =>
    rounds.flatMap(({ order }, roundIndex) => {
      const positions = positionsInOrder(layout, order);
      return positions.ok ? [] : [within(`stages[${stageIndex}].rounds[${roundIndex}].order`, positions.failure)];
    }),
  );
