import type { CalculationName } from './registry.ts';

/** What calculations are about, in the order of the work. */
export const SUBJECTS = ['target', 'joint', 'order', 'wrench', 'curve', 'judging', 'series'] as const;

export type Subject = (typeof SUBJECTS)[number];

/** Where a calculation stands in a list of all of them; the compiler asks for each one. */
export const SUBJECT_OF: Readonly<Record<CalculationName, Subject>> = {
  fastener: 'target',
  'assembly-torque': 'target',
  preload: 'target',
  friction: 'target',
  'torque-plausibility': 'target',
  compliance: 'joint',
  'tightening-angle': 'joint',
  'joint-check': 'joint',
  'tightening-order': 'order',
  'elastic-interaction': 'order',
  'round-targets': 'order',
  'order-search': 'order',
  'interaction-fit': 'order',
  convert: 'wrench',
  'wrench-setting': 'wrench',
  'applied-torque': 'wrench',
  'wrench-calibration': 'wrench',
  'calibration-interval': 'wrench',
  trace: 'curve',
  'first-movement': 'curve',
  verdict: 'judging',
  conformity: 'judging',
  'acceptance-limits': 'judging',
  'decision-risk': 'judging',
  capability: 'series',
  'control-chart': 'series',
};
