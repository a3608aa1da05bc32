import { checkJoint, type JointContent, jointContentSchema } from '@clampwright/core/joint';
import { expect, it } from 'vitest';
import { BLANK_JOINT, blankRound, blankStage } from './blank.ts';
import type { JointForm, StageForm, WindowForm } from './joint-form.ts';
import { faultOfCheck } from './mend.ts';
import { readJoint } from './read.ts';

const limits = (lower: string, upper: string, unit: string): WindowForm => ({
  form: 'limits',
  lower,
  upper,
  unit,
  target: '',
  percent: '',
  plusMinus: '',
});
const TORQUE: StageForm = { ...blankStage(1, 'torque', 'N·m'), torque: limits('130', '150', 'N·m') };
const BOTH: StageForm = {
  ...blankStage(1, 'torque-and-angle', 'N·m'),
  torque: TORQUE.torque,
  angle: limits('30', '50', 'deg'),
};
const JOINT: JointForm = {
  ...BLANK_JOINT,
  name: 'Hub',
  fastener: { ...BLANK_JOINT.fastener, thread: 'M16', propertyClass: '8.8' },
  layout: { ...BLANK_JOINT.layout, diameter: '180' },
  stages: [TORQUE],
  numbersSource: { kind: 'maker', text: 'Manual', derivation: undefined },
};

it.each<readonly [string, Partial<JointForm>, string]>([
  ['an unknown thread', { fastener: { ...JOINT.fastener, thread: 'M17' } }, 'thread'],
  ['an unknown class', { fastener: { ...JOINT.fastener, propertyClass: '9.9' } }, 'class'],
  [
    'a prevailing torque above the target',
    { fastener: { ...JOINT.fastener, prevailing: { by: 'locking', highest: '9000', unit: 'N·m' } } },
    'prevailing-too-high',
  ],
  ['positions inside of each other', { layout: { ...JOINT.layout, diameter: '20' } }, 'too-near'],
  ['a window without width', { stages: [{ ...TORQUE, torque: limits('140', '140', 'N·m') }] }, 'no-width'],
  [
    'a torque that breaks the bolt',
    { stages: [{ ...TORQUE, torque: limits('5000', '6000', 'N·m') }] },
    'torque-for-fastener',
  ],
  ['an angle stage first', { stages: [{ ...blankStage(1, 'angle', 'N·m'), angle: BOTH.angle }] }, 'angle-early'],
  ['a loose end', { stages: [TORQUE, blankStage(2, 'loosen', 'N·m')] }, 'left-loose'],
  [
    'a share of an angle',
    { stages: [{ ...BOTH, rounds: [{ ...blankRound(1), sharePercent: '50' }] }] },
    'share-with-angle',
  ],
  [
    'a last round in part',
    { stages: [{ ...TORQUE, rounds: [{ ...blankRound(1), sharePercent: '50' }] }] },
    'last-share',
  ],
  ['angle from inside the window', { stages: [{ ...BOTH, angleFrom: '140' }] }, 'angle-from-inside'],
])('says %s in words of its own', (_what, part, word) => {
  expect(readJoint({ ...JOINT, ...part }, 'en').faults.map((fault) => fault.finding)).toEqual([{ kind: 'mend', word }]);
});

it('knows words for contradictions that only another program can make', () => {
  const content = jointContentSchema.parse(readJoint(JOINT, 'en').content);
  const broken: JointContent = {
    ...content,
    stages: content.stages.map((stage) => ({ ...stage, kind: 'torque-and-angle', speedLimitDegPerS: 10 })),
    numbersSource: { kind: 'maker', text: ' ', derivation: undefined },
  };
  const findings = checkJoint(broken).map((failure) => faultOfCheck(failure, broken).finding);
  expect(findings.length).toBeGreaterThan(2);
  expect(findings.filter((finding) => finding.kind === 'invalid')).toEqual([]);
});
