import { jointContentSchema } from '@clampwright/core/joint';
import { describe, expect, it } from 'vitest';
import { BLANK_JOINT, blankRound, blankStage, inTorqueUnit, stageOfKind } from './blank.ts';
import type { JointForm, StageForm } from './joint-form.ts';
import { readJoint } from './read.ts';

const STAGE: StageForm = {
  ...blankStage(1, 'torque', 'N·m'),
  torque: { form: 'percent', target: '140', percent: '5', plusMinus: '', lower: '', upper: '', unit: 'N·m' },
};

const FILLED: JointForm = {
  ...BLANK_JOINT,
  name: ' Sheave hub ',
  fastener: { ...BLANK_JOINT.fastener, thread: 'M16', propertyClass: '8.8' },
  layout: { ...BLANK_JOINT.layout, diameter: '180' },
  stages: [STAGE],
  numbersSource: { kind: 'maker', text: 'Hub manual, page 12', derivation: undefined },
};

const withStage = (stage: Partial<StageForm>): JointForm => ({ ...FILLED, stages: [{ ...STAGE, ...stage }] });
const fieldsOf = (form: JointForm, language: 'en' | 'de' = 'en') =>
  readJoint(form, language).faults.map((fault) => fault.field);

describe('a joint being written', () => {
  it('becomes what the joint keeps, with the window as it was typed', () => {
    const { content, faults } = readJoint(FILLED, 'en');
    expect(faults).toEqual([]);
    expect(jointContentSchema.parse(content)).toMatchObject({
      name: 'Sheave hub',
      layout: { kind: 'circle', count: 8, diameterMm: 180 },
      stages: [
        {
          torque: {
            lowerNm: 133,
            targetNm: 140,
            upperNm: 147,
            typed: { form: 'percent', target: '140', percent: '5', unit: 'N·m' },
          },
        },
      ],
    });
  });

  it('tells everything that is missing of a blank one, and nothing of the maker’s is filled in', () => {
    const { content } = readJoint(BLANK_JOINT, 'en');
    expect(content).toBeUndefined();
    expect(fieldsOf(BLANK_JOINT).toSorted()).toEqual([
      'fastener.thread',
      'layout.diameterMm',
      'name',
      'numbersSource.text',
      'stages[0].torque.percent',
      'stages[0].torque.target',
    ]);
  });

  it.each([
    ['7', ['layout.missing']],
    ['1 2 3 4 5 6', ['layout.missing']],
    ['2, x', ['layout.missing']],
    ['2; 5', []],
    ['', []],
  ] as const)('takes the places %s without a fastener, of a rectangle that has them', (missing, faults) => {
    const layout = {
      ...FILLED.layout,
      kind: 'rectangle',
      rows: '2',
      columns: '3',
      pitchX: '50',
      pitchY: '50',
    } as const;
    expect(fieldsOf({ ...FILLED, layout: { ...layout, missing } })).toEqual(faults);
  });

  it('leaves out cautions without words', () => {
    const form = {
      ...FILLED,
      cautions: [
        { key: 1, text: ' ' },
        { key: 2, text: 'Hang the rope off first.' },
      ],
    };
    expect(readJoint(form, 'en').content?.cautions).toEqual(['Hang the rope off first.']);
  });

  it('draws the layout while other parts are still missing', () => {
    const form = { ...BLANK_JOINT, layout: FILLED.layout };
    expect(readJoint(form, 'en').layout).toMatchObject({ diameterMm: 180 });
  });

  it('takes lengths in inches', () => {
    const form = { ...FILLED, layout: { ...FILLED.layout, unit: 'in', diameter: '7.5' } as const };
    expect(readJoint(form, 'en').layout).toMatchObject({ diameterMm: 190.5 });
  });
});

describe('a window', () => {
  it('is read with the decimals of the language', () => {
    const torque = { ...STAGE.torque, target: '12,5', percent: '4' };
    expect(readJoint(withStage({ torque }), 'de').content?.stages[0]?.torque?.targetNm).toBe(12.5);
    expect(fieldsOf(withStage({ torque }))).toEqual(['stages[0].torque.target']);
  });

  // 1 lbf·ft = 1.3558179483314004 N·m: NIST SP 811:2008, appendix B.8
  it('is read as lower to upper in any unit', () => {
    const torque = { ...STAGE.torque, form: 'limits', lower: '90', upper: '110', unit: 'lbf·ft' } as const;
    const read = readJoint(withStage({ torque }), 'en').content?.stages[0]?.torque;
    expect(read?.lowerNm).toBeCloseTo(122.02361534982604, 10);
    expect(read?.targetNm).toBeCloseTo(135.58179483314004, 10);
  });

  it('names the unit that was likely meant', () => {
    const torque = { ...STAGE.torque, target: '140000', unit: 'lbf·ft' };
    expect(readJoint(withStage({ torque }), 'en').faults).toEqual([
      {
        field: 'stages[0].torque.target',
        finding: { kind: 'torque', text: '140000', unit: 'lbf·ft', meant: 'lbf·in' },
      },
    ]);
  });

  it.each([
    [{ form: 'limits', lower: '150', upper: '130' }, 'upper', 'lower-above-upper'],
    [{ form: 'plus-minus', target: '10', plusMinus: '11' }, 'plusMinus', 'below-zero'],
    [{ form: 'percent', target: '140', percent: '101' }, 'percent', 'between'],
    [{ form: 'percent', target: '140', percent: '' }, 'percent', 'needed'],
  ] as const)('%o is a fault of its field %s', (figures, field, kind) => {
    const { faults } = readJoint(withStage({ torque: { ...STAGE.torque, ...figures } }), 'en');
    expect(faults).toMatchObject([{ field: `stages[0].torque.${field}`, finding: { kind } }]);
  });

  it('is left out where the kind of stage has none', () => {
    const stage = stageOfKind(STAGE, 'loosen');
    expect(stage.torque).toEqual(STAGE.torque);
    expect(readJoint(withStage(stage), 'en').stages[0]).not.toHaveProperty('torque');
  });

  it('follows the unit of the work while nothing is typed in it', () => {
    const form = inTorqueUnit({ ...FILLED, stages: [STAGE, blankStage(2, 'angle', 'N·m')] }, 'lbf·ft');
    expect(form.stages.map((stage) => stage.torque.unit)).toEqual(['N·m', 'lbf·ft']);
  });
});

describe('a round', () => {
  it('may be kept with an own order that lacks positions, but not released', () => {
    const rounds = [{ ...blankRound(1), method: 'own', positions: [1, 5, 3] } as const];
    const { content, faults } = readJoint(withStage({ rounds }), 'en');
    expect(content?.stages[0]?.rounds[0]?.order).toEqual({ method: 'own', positions: [1, 5, 3] });
    expect(faults).toEqual([{ field: 'stages[0].rounds[0].order', finding: { kind: 'each-once', count: 8 } }]);
  });

  it('refuses a share above the whole', () => {
    const rounds = [{ ...blankRound(1), sharePercent: '110' }];
    expect(fieldsOf(withStage({ rounds }))).toEqual(['stages[0].rounds[0].share']);
  });
});
