import type { Failure } from '@clampwright/core/failure';
import type { JointContent } from '@clampwright/core/joint';
import { countPlaces } from '@clampwright/core/layout';
import type { Stage } from '@clampwright/core/procedure';
import type { Fault, FormFinding } from '../../forms/fault.ts';

type Finds = (stage: Stage | undefined, content: JointContent) => FormFinding;

const mend =
  (word: Extract<FormFinding, { kind: 'mend' }>['word']): Finds =>
  () => ({ kind: 'mend', word });

/** What the check of the core finds at a field, in a form that the catalogues can say. */
const BY_FIELD: readonly (readonly [RegExp, Finds])[] = [
  [/^fastener\.propertyClass$/, mend('class')],
  [/^fastener\.prevailing/, mend('prevailing-too-high')],
  [/^fastener/, mend('thread')],
  [/^layout/, mend('too-near')],
  [/^neighbours\.plan$/, mend('plan-stage')],
  [
    /\.positionShares$/,
    (stage, content) => ({ kind: 'mend', word: sharesFit(stage, content) ? 'torque-for-fastener' : 'targets-count' }),
  ],
  [/\.closing$/, mend('closing-last')],
  [/^numbersSource/, () => ({ kind: 'needed' })],
  [/\.order/, (_stage, { layout }) => ({ kind: 'each-once', count: countPlaces(layout) })],
  [/\.share$/, (stage) => ({ kind: 'mend', word: stage?.angle ? 'share-with-angle' : 'last-share' })],
  [/\.kind$/, (stage) => ({ kind: 'mend', word: stage?.kind === 'loosen' ? 'left-loose' : 'angle-early' })],
  [/\.angleFromNm$/, mend('angle-from-inside')],
  [/\.speedLimitDegPerS$/, mend('speed-without-angle')],
  [/\.typed/, mend('typed-differs')],
  [/\.angle\.upperDeg$/, mend('no-width')],
  [/\.torque\.upperNm$/, (stage) => ({ kind: 'mend', word: hasNoWidth(stage) ? 'no-width' : 'torque-for-fastener' })],
  [/\.(?:lower|target)(?:Nm|Deg)$/, mend('limits-order')],
  [/\.(?:torque|angle)$/, mend('window-missing')],
];

const sharesFit = (stage: Stage | undefined, { layout }: JointContent): boolean =>
  stage?.rounds.every(({ positionShares: own }) => !own || own.length === countPlaces(layout)) ?? true;

const hasNoWidth = (stage: Stage | undefined): boolean => stage?.torque?.lowerNm === stage?.torque?.upperNm;

/** A contradiction of the joint's own check, at its field and in words of the catalogues where it is known there. */
export function faultOfCheck(failure: Failure, content: JointContent): Fault {
  if (failure.kind !== 'invalid') return { field: '', finding: failure };
  const { field } = failure;
  const index = /^stages\[(\d+)\]/.exec(field)?.[1];
  const stage = index === undefined ? undefined : content.stages[Number(index)];
  const finds = BY_FIELD.find(([pattern]) => pattern.test(field))?.[1];
  return { field, finding: finds ? finds(stage, content) : failure };
}
