import { fastener } from '../fastener/fastener.ts';
import { derivationStands } from '../joint/derivation.ts';
import { type JointContent, threadTold } from '../joint/joint.ts';
import type { Neighbours } from '../joint/neighbours.ts';
import { jointFrom } from '../layout/interaction/source.ts';
import { inverseOf, type SquareMatrix } from '../layout/interaction/square-matrix.ts';
import type { CurveMechanics } from '../trace/from-mechanics.ts';

/**
 * What a joint's mechanics tell of the curve of one position: stiffness from what is known of its neighbours, torque
 * over preload from its derivation, or else from its planned rounds.
 *
 * @param position from 1
 * @returns undefined where the joint does not say both, or where its neighbours are known by ratios alone
 */
export function curveMechanics(content: JointContent, position: number): CurveMechanics | undefined {
  const { neighbours, fastener: spec } = content;
  const told = torqueAndPreload(content);
  if (!neighbours || !told || !isInNewtons(neighbours)) return undefined;
  const thread = fastener(threadTold(spec));
  const joint = jointFrom(neighbours);
  if (!thread.ok || !joint.ok || position > joint.value.count) return undefined;
  const { first, later = first } = joint.value;
  const allTight = inverseOf(later);
  if (!allTight) return undefined;
  return {
    softestNPerMm: 1 / ownOf(first, position),
    stiffestNPerMm: ownOf(allTight, position),
    pitchMm: thread.value.pitchMm,
    ...told,
  };
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
