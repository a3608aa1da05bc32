import { fastener } from '../fastener/fastener.ts';
import { derivationStands } from '../joint/derivation.ts';
import { type JointContent, threadTold } from '../joint/joint.ts';
import type { Neighbours } from '../joint/neighbours.ts';
import { jointFrom } from '../layout/interaction/source.ts';
import { inverseOf, type SquareMatrix } from '../layout/interaction/square-matrix.ts';
import type { CurveMechanics } from '../trace/from-mechanics.ts';

/**
 * What a joint's mechanics tell of the curve of one position: stiffness from what is known of its neighbours, or else
 * what the joint states of a single fastener; torque over preload from its derivation, or else from its planned rounds.
 *
 * @param position from 1
 * @returns undefined where the joint does not say both
 */
export function curveMechanics(content: JointContent, position: number): CurveMechanics | undefined {
  const told = torqueAndPreload(content);
  const stiffness = amongNeighbours(content, position) ?? onItsOwn(content);
  const thread = fastener(threadTold(content.fastener));
  return told && stiffness && thread.ok ? { ...stiffness, pitchMm: thread.value.pitchMm, ...told } : undefined;
}

type Stiffness = Pick<CurveMechanics, 'softestNPerMm' | 'stiffestNPerMm'>;

/** Undefined where the neighbours are known by ratios alone. */
function amongNeighbours({ neighbours }: JointContent, position: number): Stiffness | undefined {
  if (!neighbours || !isInNewtons(neighbours)) return undefined;
  const joint = jointFrom(neighbours);
  if (!joint.ok || position > joint.value.count) return undefined;
  const { first, later = first } = joint.value;
  const allTight = inverseOf(later);
  return allTight && { softestNPerMm: 1 / ownOf(first, position), stiffestNPerMm: ownOf(allTight, position) };
}

function onItsOwn({ fastener: { stiffnessNPerMm } }: JointContent): Stiffness | undefined {
  return stiffnessNPerMm === undefined
    ? undefined
    : { softestNPerMm: stiffnessNPerMm, stiffestNPerMm: stiffnessNPerMm };
}

const ownOf = ({ size, values }: SquareMatrix, position: number): number => values[(position - 1) * (size + 1)]!;

/** Coefficients of interaction, and the model of ratios, leave the scale of the stiffness open. */
const isInNewtons = ({ complianceMmPerN, model }: Neighbours): boolean =>
  complianceMmPerN !== undefined || (model !== undefined && model.kind !== 'neighbours');

function torqueAndPreload({
  stages,
  numbersSource: { derivation },
  neighbours,
}: JointContent): Pick<CurveMechanics, 'torqueNm' | 'preloadN'> | undefined {
  if (derivation && derivationStands(derivation, stages)) {
    const { torqueNm, preloadN } = derivation.output;
    return { torqueNm, preloadN };
  }
  const plan = neighbours?.plan;
  const torqueNm = plan && stages[plan.stage - 1]?.torque?.targetNm;
  return plan && torqueNm !== undefined ? { torqueNm, preloadN: plan.finalN } : undefined;
}
