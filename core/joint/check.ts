import type { Failure } from '../failure/failure.ts';
import { fastenerKnown, ownRowsFit, prevailingLeavesTorque, spacingLeavesRoom } from './checks/fastener.ts';
import { ordersArePermutations } from './checks/orders.ts';
import { closingRoundsLast, neighboursFit, positionSharesFit } from './checks/planned.ts';
import { angleAfterSeating, endsTightened, fullShareAtLast, shareScalesTorqueAlone } from './checks/sequence.ts';
import { numbersHaveSource } from './checks/source.ts';
import { torqueBreaksNothing } from './checks/torque.ts';
import { typedFits } from './checks/typed.ts';
import { angleCountsBelowWindow, speedLimitHasAngle, windowsInOrder, windowsPresent } from './checks/windows.ts';
import type { JointContent } from './joint.ts';

/** Each tells one kind of contradiction; a new one is a function and a line here. */
const CHECKS: readonly ((content: JointContent) => readonly Failure[])[] = [
  fastenerKnown,
  ownRowsFit,
  prevailingLeavesTorque,
  spacingLeavesRoom,
  windowsPresent,
  windowsInOrder,
  typedFits,
  torqueBreaksNothing,
  angleCountsBelowWindow,
  speedLimitHasAngle,
  angleAfterSeating,
  endsTightened,
  shareScalesTorqueAlone,
  fullShareAtLast,
  ordersArePermutations,
  positionSharesFit,
  closingRoundsLast,
  neighboursFit,
  numbersHaveSource,
];

/**
 * Every contradiction that a lead must mend before a joint is released.
 *
 * @param content what its schema let through
 * @returns refusals with the path of the field, such as `stages[1].torque.lowerNm`; empty when it may be released
 */
export const checkJoint = (content: JointContent): readonly Failure[] => CHECKS.flatMap((check) => check(content));
