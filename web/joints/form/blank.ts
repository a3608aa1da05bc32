import type { StageKind } from '@clampwright/core/procedure';
import type { TorqueUnit } from '@clampwright/core/quantity';
import { BLANK_NEIGHBOURS } from '../plan/neighbours-form.ts';
import type { JointForm, LayoutForm, RoundForm, StageForm, WindowForm } from './joint-form.ts';

/** Which quantities a stage of this kind judges: always, if the lead wants it, or never. */
export const STAGE_QUANTITIES = {
  snug: { torque: 'always', angle: 'never' },
  torque: { torque: 'always', angle: 'never' },
  angle: { torque: 'optional', angle: 'always' },
  'torque-and-angle': { torque: 'always', angle: 'always' },
  check: { torque: 'always', angle: 'never' },
  loosen: { torque: 'never', angle: 'never' },
} as const satisfies Record<StageKind, Record<'torque' | 'angle', 'always' | 'optional' | 'never'>>;

export const blankWindow = (unit: string): WindowForm => ({
  form: 'percent',
  target: '',
  percent: '',
  plusMinus: '',
  lower: '',
  upper: '',
  unit,
});

export const blankRound = (key: number): RoundForm => ({
  key,
  sharePercent: '100',
  method: 'circular',
  positions: [],
  positionShares: undefined,
  isClosing: false,
  stillDeg: '',
});

export const blankStage = (key: number, kind: StageKind, unit: TorqueUnit): StageForm => ({
  key,
  kind,
  torqueUsed: STAGE_QUANTITIES[kind].torque === 'always',
  torque: blankWindow(unit),
  angleUsed: STAGE_QUANTITIES[kind].angle === 'always',
  angle: blankWindow('deg'),
  angleFrom: '',
  angleFromUnit: unit,
  speedLimit: '',
  rounds: [blankRound(1)],
});

/** A stage made another kind: windows that the new kind cannot have are dropped from use, their texts stay. */
export const stageOfKind = (stage: StageForm, kind: StageKind): StageForm => ({
  ...stage,
  kind,
  torqueUsed: used(STAGE_QUANTITIES[kind].torque, stage.torqueUsed),
  angleUsed: used(STAGE_QUANTITIES[kind].angle, stage.angleUsed),
});

const used = (need: 'always' | 'optional' | 'never', before: boolean): boolean =>
  need === 'always' || (need === 'optional' && before);

const BLANK_LAYOUT: LayoutForm = {
  kind: 'circle',
  unit: 'mm',
  count: '8',
  diameter: '',
  firstAngle: '0',
  direction: 'clockwise',
  rows: '2',
  columns: '4',
  pitchX: '',
  pitchY: '',
  edgeOnly: false,
  staggered: false,
  missing: '',
  pitch: '',
  points: [],
};

/** What a lead begins with. Nothing that belongs to the maker is filled in. */
export const BLANK_JOINT: JointForm = {
  name: '',
  fastener: {
    thread: '',
    propertyClass: '',
    ownBolt: undefined,
    ownMaterial: undefined,
    description: '',
    lubricant: '',
    reuse: 'reusable',
    prevailing: { by: 'none', highest: '', unit: 'N·m' },
    stiffness: '',
  },
  layout: BLANK_LAYOUT,
  stages: [blankStage(1, 'torque', 'N·m')],
  numbersSource: { kind: 'maker', text: '', derivation: undefined },
  cautions: [],
  rework: { rule: 'loosen-and-repeat', underContinues: true, maximumAttempts: '3' },
  decisionRule: { kind: 'simple', factor: '', maximumPercent: '' },
  neighbours: BLANK_NEIGHBOURS,
  consequenceClass: 'none',
  torqueUnit: 'N·m',
  retorque: { used: false, after: '', unit: 'km', note: '' },
};

/** The joint worked in another unit; windows in which nothing is typed yet follow it. */
export function inTorqueUnit(form: JointForm, torqueUnit: TorqueUnit): JointForm {
  const followed = (window: WindowForm): WindowForm =>
    [window.target, window.lower, window.upper].every((text) => text === '') ? { ...window, unit: torqueUnit } : window;
  const stages = form.stages.map((stage) => ({
    ...stage,
    torque: followed(stage.torque),
    angleFromUnit: stage.angleFrom === '' ? torqueUnit : stage.angleFromUnit,
  }));
  const { prevailing } = form.fastener;
  const fastener =
    prevailing.highest === '' ? { ...form.fastener, prevailing: { ...prevailing, unit: torqueUnit } } : form.fastener;
  return { ...form, torqueUnit, fastener, stages };
}
