/** The parts of a joint in the order in which the editor shows them; each is an anchor of its page. */
export const JOINT_PARTS = [
  'name',
  'fastener',
  'layout',
  'stages',
  'numbersSource',
  'cautions',
  'rework',
  'decisionRule',
  'retorque',
] as const;
export type JointPart = (typeof JOINT_PARTS)[number];

/** The part that a field belongs to; the unit of the work stands with the name, the consequence class with the rule. */
export function partOf(field: string): JointPart | undefined {
  const head = /^\w+/.exec(field)?.[0];
  if (head === 'consequenceClass') return 'decisionRule';
  return head === 'torqueUnit' ? 'name' : JOINT_PARTS.find((part) => part === head);
}

/** Fields in the order of the editor: part by part, within the stages by their numbers. */
export function inOrderOfParts<T extends { readonly field: string }>(faults: readonly T[]): readonly T[] {
  const rank = ({ field }: T) => {
    const part = partOf(field);
    return part ? JOINT_PARTS.indexOf(part) : JOINT_PARTS.length;
  };
  return faults.toSorted((a, b) => rank(a) - rank(b));
}
