import { describe, expect, it } from 'vitest';
import { BLANK_JOINT, blankStage, inTorqueUnit } from '../form/blank.ts';
import type { JointForm } from '../form/joint-form.ts';
import type { Brought } from './brought.ts';
import { withStage } from './fill-stage.ts';

const TORQUE: Brought = {
  thread: 'M12',
  propertyClass: '8.8',
  sourceText: 'Worked out on Bench',
  stage: { kind: 'torque', torque: { target: 80, percent: 4 } },
};
const ANGLE: Brought = {
  thread: 'M12',
  propertyClass: '10.9',
  stage: {
    kind: 'torque-and-angle',
    torque: { target: 120, lower: 100, upper: 150 },
    angle: { target: 62.5 },
    angleFromNm: 30,
  },
};
/** A joint with a torque stage that is written already. */
const WRITTEN: JointForm = {
  ...BLANK_JOINT,
  stages: [{ ...blankStage(4, 'torque', 'N·m'), torque: { ...blankStage(4, 'torque', 'N·m').torque, target: '50' } }],
};

describe('a stage brought from Bench', () => {
  it('fills the blank stage of a new joint, with its source and its fastener', () => {
    const { form, stageIndex } = withStage(BLANK_JOINT, TORQUE, [], 'en');
    expect(stageIndex).toBe(0);
    expect(form.stages).toHaveLength(1);
    expect(form.stages[0]?.torque).toMatchObject({ form: 'percent', target: '80', percent: '4', unit: 'N·m' });
    expect(form.fastener).toMatchObject({ thread: 'M12', propertyClass: '8.8' });
    expect(form.numbersSource).toEqual({ kind: 'derived', text: 'Worked out on Bench', derivation: undefined });
  });

  it('is said in the unit in which the joint is worked', () => {
    const { form } = withStage(inTorqueUnit(BLANK_JOINT, 'lbf·ft'), TORQUE, [], 'de');
    // 80 N·m over 1.3558179483 N·m (NIST SP 811:2008, appendix B).
    expect(form.stages[0]?.torque).toMatchObject({ target: '59', unit: 'lbf·ft' });
  });

  it('makes the blank stage one of its kind, and leaves the tolerance that nobody told empty', () => {
    const { form } = withStage(BLANK_JOINT, ANGLE, [], 'fr');
    expect(form.stages[0]).toMatchObject({
      kind: 'torque-and-angle',
      torqueUsed: true,
      angleUsed: true,
      torque: { form: 'limits', lower: '100', upper: '150' },
      angle: { form: 'percent', target: '62,5', percent: '', unit: 'deg' },
      angleFrom: '30',
      angleFromUnit: 'N·m',
    });
  });

  it('takes the first stage of its kind in a joint that is written, else adds one', () => {
    const replaced = withStage(WRITTEN, TORQUE, [], 'en');
    expect([replaced.stageIndex, replaced.form.stages[0]?.torque.target]).toEqual([0, '80']);
    const added = withStage(WRITTEN, ANGLE, [], 'en');
    expect([added.stageIndex, added.form.stages[0]?.torque.target]).toEqual([1, '50']);
    expect(added.form.stages.map(({ key }) => key)).toEqual([4, 5]);
  });

  it('changes nothing where no stage is brought', () => {
    expect(withStage(WRITTEN, { thread: 'M12', derive: {} }, [], 'en')).toEqual({
      form: WRITTEN,
      stageIndex: undefined,
    });
  });
});
