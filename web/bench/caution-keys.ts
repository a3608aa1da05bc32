import type { CalculationName } from '@clampwright/core/calculations';
import type lead from '../words/lead.en.json';

export type CautionKey = keyof (typeof lead)['bench']['caution'];

const CAUTIONS = {
  convert: ['read-the-unit-twice'],
  fastener: ['maker-first', 'no-assembly-target'],
  'assembly-torque': ['maker-first', 'friction-decides', 'no-safety-in-it'],
  preload: ['maker-first', 'as-good-as-friction', 'not-after-tightening'],
  friction: ['tested-parts-only', 'test-at-the-preload'],
  'torque-plausibility': ['maker-first', 'sense-is-not-right'],
  compliance: ['maker-first', 'in-line-or-measure'],
  'tightening-angle': ['maker-first', 'assumed-law-of-steel', 'structural-bolts-licensed'],
  'joint-check': ['maker-first', 'one-bolt-in-line', 'licensed-check'],
  'wrench-setting': ['maker-first', 'hand-at-the-mark', 'extension-not-counted'],
  'applied-torque': ['maker-first', 'hand-at-the-mark', 'extension-not-counted'],
  'tightening-order': ['makers-order-first', 'gasket-rounds'],
  'elastic-interaction': ['maker-first', 'elastic-only'],
  'round-targets': ['maker-first', 'elastic-only', 'look-at-the-scatter'],
  'order-search': ['maker-first', 'elastic-only', 'no-other-order'],
  'interaction-fit': ['measured-joint-only', 'recheck-holds-friction'],
  verdict: ['no-proof-of-clamp-force'],
  'wrench-calibration': ['certificate-wants-more', 'assumed-is-marked'],
  conformity: ['normal-about-it'],
  'acceptance-limits': ['normal-about-it'],
  'decision-risk': ['normal-about-it', 'process-stays'],
  capability: ['steady-and-normal', 'torque-is-no-clamp-force'],
  'control-chart': ['signal-asks-for-a-cause', 'chart-limits-not-tolerance'],
  'calibration-interval': ['alike-wrenches-only', 'ordered-interval-first'],
  trace: ['maker-first', 'no-finding-no-proof', 'own-curves-first'],
  'first-movement': ['restart-is-not-tightening', 'turning-on-tightens'],
} as const satisfies Record<CalculationName, readonly CautionKey[]>;

/** The cautions of a calculation in the catalogue; a test holds them to the registry's own. */
export const cautionKeys = (name: CalculationName): readonly CautionKey[] => CAUTIONS[name];
