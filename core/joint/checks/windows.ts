import type { Failure } from '../../failure/failure.ts';
import type { StageKind } from '../../procedure/procedure.ts';
import { inEachStage, refusal } from './refusal.ts';

const NEEDS: Readonly<Record<StageKind, readonly ('torque' | 'angle')[]>> = {
  snug: ['torque'],
  torque: ['torque'],
  angle: ['angle'],
  'torque-and-angle': ['torque', 'angle'],
  check: ['torque'],
  loosen: [],
};

/** A pull is judged against what its kind of stage is about. */
export const windowsPresent = inEachStage((stage, path) =>
  NEEDS[stage.kind].flatMap((quantity) =>
    stage[quantity]
      ? []
      : [refusal(`${path}.${quantity}`, `stage ${stage.kind} without its ${quantity}`, `a window of ${quantity}`)],
  ),
);

export const windowsInOrder = inEachStage(({ torque, angle }, path) => [
  ...(torque ? inOrder(`${path}.torque`, 'Nm', torque.lowerNm, torque.targetNm, torque.upperNm) : []),
  ...(angle ? inOrder(`${path}.angle`, 'Deg', angle.lowerDeg, angle.targetDeg, angle.upperDeg) : []),
]);

function inOrder(path: string, unit: 'Nm' | 'Deg', lower: number, target: number, upper: number): readonly Failure[] {
  const figures = [`${path}.lower${unit}`, `${path}.target${unit}`, `${path}.upper${unit}`] as const;
  if (lower > upper)
    return [refusal(figures[0], `the lower limit ${lower} lies above the upper ${upper}`, `below ${upper}`)];
  if (lower === upper) return [refusal(figures[2], 'the window has no width: no pull can be within', `above ${lower}`)];
  if (target < lower)
    return [refusal(figures[1], `the target ${target} lies below the lower limit ${lower}`, `${lower} to ${upper}`)];
  if (target > upper)
    return [refusal(figures[1], `the target ${target} lies above the upper limit ${upper}`, `${lower} to ${upper}`)];
  return [];
}

/** Counting that begins inside the torque window lets a pull be within before it has turned. */
export const angleCountsBelowWindow = inEachStage(({ angleFromNm, torque, angle }, path) => {
  if (angleFromNm === undefined || !torque || !angle || angleFromNm < torque.lowerNm) return [];
  return [
    refusal(
      `${path}.angleFromNm`,
      'angle is counted only from inside the torque window',
      `below ${torque.lowerNm} N·m`,
    ),
  ];
});

export const speedLimitHasAngle = inEachStage(({ speedLimitDegPerS, angle }, path) =>
  speedLimitDegPerS === undefined || angle
    ? []
    : [
        refusal(
          `${path}.speedLimitDegPerS`,
          'a speed limit is watched only where an angle is judged',
          'left out, or a window of angle',
        ),
      ],
);
