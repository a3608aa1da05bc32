import { invalid, ok, type Result } from '../../failure/failure.ts';
import { remark } from '../../language/mechanics/remark.ts';
import type { InteractionModel, NeighbourModel } from './model-schema.ts';
import { LINEAR, type Modelled } from './modelled.ts';
import { plateJoint } from './plate-joint.ts';
import { ringJoint } from './ring-joint.ts';
import { asCompliance, matrixOf, type SquareMatrix } from './square-matrix.ts';
import { stripJoint } from './strip-joint.ts';

/** Compliance of a joint from its dimensions. Refused with the dimension that cannot be. */
export function modelled(model: InteractionModel): Result<Modelled> {
  switch (model.kind) {
    case 'ring':
      return ringJoint(model);
    case 'plate':
      return plateJoint(model);
    case 'strip':
      return stripJoint(model);
    case 'neighbours':
      return ofNeighbours(model);
  }
}

/** Compliance over that of one bolt: 1, then the neighbour's, then less by the decay with each step. */
export const neighbourCompliance = ({
  arrangement,
  count,
  neighbour,
  decay,
}: Omit<NeighbourModel, 'kind'>): SquareMatrix =>
  matrixOf(count, (i, j) => {
    const apart = Math.abs(i - j);
    const steps = arrangement === 'circle' ? Math.min(apart, count - apart) : apart;
    return steps === 0 ? 1 : neighbour * decay ** (steps - 1);
  });

function ofNeighbours(model: NeighbourModel): Result<Modelled> {
  const matrix = asCompliance(neighbourCompliance(model), 'model.neighbour');
  if (!matrix.ok) {
    const message = 'No elastic joint has neighbours that take part so much.';
    return invalid('model.neighbour', message, 'nearer to 0, or a decay nearer to 0');
  }
  return ok({
    first: matrix.value,
    assumptions: [remark('bolts-alike'), LINEAR],
  });
}
