import type { Failure } from '../../failure/failure.ts';
import { within } from '../../failure/within.ts';
import { fastener } from '../../fastener/fastener.ts';
import type { Layout } from '../../layout/layout.ts';
import { places } from '../../layout/places.ts';
import { type JointContent, threadTold } from '../joint.ts';
import { refusal } from './refusal.ts';

const known = ({ fastener: spec }: JointContent) => fastener(threadTold(spec), spec.propertyClass);

export function fastenerKnown(content: JointContent): readonly Failure[] {
  const data = known(content);
  return data.ok ? [] : [within('fastener', data.failure)];
}

/** The copies of own rows say what thread and class say. */
export function ownRowsFit({
  fastener: { thread, propertyClass, ownBolt, ownMaterial },
}: JointContent): readonly Failure[] {
  const isOther = ownBolt !== undefined && ownBolt.name !== thread;
  return [
    ...(isOther ? [refusal('fastener.thread', `The own bolt is ${ownBolt.name}, not ${thread}.`, ownBolt.name)] : []),
    ...(propertyClass !== undefined && ownMaterial !== undefined
      ? [refusal('fastener.propertyClass', 'Class and own material are both told.', 'either of them')]
      : []),
  ];
}

/** What turns the fastener before it clamps leaves a part of every target to clamp with. */
export function prevailingLeavesTorque({ fastener: { prevailing }, stages }: JointContent): readonly Failure[] {
  const targetsNm = stages.flatMap(({ kind, torque }) => (kind === 'snug' || !torque ? [] : [torque.targetNm]));
  const leastNm = Math.min(...targetsNm);
  if (!prevailing || prevailing.highestNm < leastNm) return [];
  const message = `A prevailing torque of ${prevailing.highestNm} N·m leaves nothing of a target of ${leastNm} N·m to clamp with.`;
  return [refusal('fastener.prevailing.highestNm', message, `less than ${leastNm} N·m`)];
}

/** Two fasteners do not fit nearer to each other than one is thick; such a spacing is a slip of unit or figure. */
export function spacingLeavesRoom({ layout, fastener: spec }: JointContent): readonly Failure[] {
  const data = fastener(threadTold(spec));
  const leastMm = data.ok ? data.value.majorDiameterMm : 0;
  const all = places(layout);
  for (const [index, a] of all.entries()) {
    const near = all.slice(0, index).find((b) => isNearer(Math.hypot(a.xMm - b.xMm, a.yMm - b.yMm), leastMm));
    if (!near) continue;
    const message = `positions ${near.position} and ${a.position} lie nearer than a fastener is thick`;
    return [
      refusal(`layout.${spacingField(layout, a.xMm !== near.xMm, index)}`, message, `at least ${leastMm} mm apart`),
    ];
  }
  return [];
}

const isNearer = (distanceMm: number, leastMm: number): boolean =>
  distanceMm === 0 || distanceMm < leastMm * (1 - 1e-9);

function spacingField(layout: Layout, isAcross: boolean, index: number): string {
  switch (layout.kind) {
    case 'circle':
      return 'diameterMm';
    case 'rectangle':
      return isAcross ? 'pitchXMm' : 'pitchYMm';
    case 'line':
      return 'pitchMm';
    case 'points':
      return `points[${index}]`;
  }
}
