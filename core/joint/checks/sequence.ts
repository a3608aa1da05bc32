import type { Failure } from '../../failure/failure.ts';
import type { StageKind } from '../../procedure/procedure.ts';
import type { JointContent } from '../joint.ts';
import { inEachStage, refusal } from './refusal.ts';

const SEATS: readonly StageKind[] = ['snug', 'torque', 'torque-and-angle'];

/** An angle means nothing before the parts lie on each other; loosening undoes that. */
export function angleAfterSeating({ stages }: JointContent): readonly Failure[] {
  let isSeated = false;
  return stages.flatMap(({ kind }, index) => {
    const isEarly = kind === 'angle' && !isSeated;
    if (SEATS.includes(kind)) isSeated = true;
    if (kind === 'loosen') isSeated = false;
    if (!isEarly) return [];
    return [
      refusal(
        `stages[${index}].kind`,
        'nothing before this angle stage brings the parts together',
        'a snug or torque stage before it',
      ),
    ];
  });
}

/** A procedure that tightens does not leave the joint loose. */
export function endsTightened({ stages }: JointContent): readonly Failure[] {
  const isLeftLoose = stages.at(-1)?.kind === 'loosen' && stages.some(({ kind }) => kind !== 'loosen');
  if (!isLeftLoose) return [];
  return [
    refusal(
      `stages[${stages.length - 1}].kind`,
      'the last stage leaves the joint loose',
      'a stage that tightens at the end',
    ),
  ];
}

export const shareScalesTorqueAlone = inEachStage(({ angle, rounds }, path) =>
  rounds.flatMap(({ share, positionShares }, index) =>
    angle && (share !== 1 || positionShares)
      ? [refusal(`${path}.rounds[${index}].share`, 'a share scales torque alone, and this stage has an angle', '1')]
      : [],
  ),
);

/** The last round brings the whole torque. */
export const fullShareAtLast = inEachStage(({ kind, torque, angle, rounds }, path) => {
  const last = rounds.length - 1;
  const share = rounds[last]?.share;
  if (kind === 'loosen' || !torque || angle || share === 1 || share === undefined) return [];
  return [
    refusal(
      `${path}.rounds[${last}].share`,
      `the last round stops at ${share * 100} percent of the torque`,
      '1 in the last round',
    ),
  ];
});
