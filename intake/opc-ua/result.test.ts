import { describe, expect, it } from 'vitest';
import { readResult } from './result.ts';
import { QUANTITY } from './result-shape.ts';

const units = (unitId: number, text: string) => ({ unitId, displayName: { text } });
// 20053 is the unit number that OPC 10000-8, 5.6.4.3 gives to the common code NU: 'N' × 256 + 'U'
const NEWTON_METRE = units(20053, 'N·m');
const figure = (measuredValue: number, physicalQuantity: number, more: object = {}) => ({
  measuredValue,
  physicalQuantity,
  engineeringUnits: physicalQuantity === QUANTITY.torque ? NEWTON_METRE : units(17476, '°'),
  ...more,
});
const result = (content: object, meta: object = {}) => ({
  resultMetaData: { resultId: 'a', classification: 1, creationTime: new Date('2026-05-04T09:01:33.120Z'), ...meta },
  resultContent: [{ value: content }],
});
const torque = (value: number, more?: object) => figure(value, QUANTITY.torque, more);
const read = (value: unknown) => readResult(value, 'station');

describe('a result of a joining system', () => {
  it('becomes a pull with the figures that are tagged as final', () => {
    const values = [torque(60.2, { valueTag: 1 }), torque(64, { valueTag: 2 }), figure(31.5, QUANTITY.angle)];
    expect(read(result({ overallResultValues: values }))).toMatchObject({
      value: {
        kind: 'pull',
        pull: {
          takenAt: '2026-05-04T09:01:33.120Z',
          torque: { text: '60.2', unit: 'N·m', value: 60.2 },
          angle: { text: '31.5', unit: 'deg', value: 31.5 },
        },
      },
    });
  });

  it('ends with its last step where the whole says nothing', () => {
    const steps = [{ stepResultValues: [torque(20)] }, { stepResultValues: [torque(61)] }];
    expect(read(result({ stepResults: steps }))).toMatchObject({ value: { pull: { torque: { value: 61 } } } });
  });

  it('is converted from the unit that it names, by number or in words', () => {
    // 50 lbf·ft = 67.790897 N·m (NIST SP 811:2008, appendix B.8: 1 lbf·ft = 1.355818 N·m)
    for (const engineeringUnits of [units(5060914, ''), units(-1, 'ft·lbf'), units(0, 'lbf ft')]) {
      const pound = read(result({ overallResultValues: [torque(50, { engineeringUnits })] }));
      expect(pound).toMatchObject({
        value: { pull: { torque: { unit: 'lbf·ft', value: expect.closeTo(67.790897, 4) } } },
      });
    }
  });

  it('has the same identity however often it is told, and another in another system', () => {
    const ids = ['station', 'station', 'handheld'].map((origin) => {
      const told = readResult(result({ overallResultValues: [torque(60)] }), origin);
      return told.ok && told.value.kind === 'pull' ? told.value.pull.id : undefined;
    });
    expect(ids[0]).toEqual(ids[1]);
    expect(ids[2]).not.toEqual(ids[0]);
  });

  it.each([
    ['a batch', {}, { classification: 3 }],
    ['a part of a result', {}, { isPartial: true }],
    ['an intervention', {}, { classification: 6 }],
  ])('is passed over when it is %s', (_, content, meta) => {
    expect(read(result({ overallResultValues: [torque(60)], ...content }, meta))).toMatchObject({
      value: { kind: 'passed-over' },
    });
  });

  it.each([
    ['has no torque', result({ overallResultValues: [figure(30, QUANTITY.angle)] }), 'overallResultValues'],
    [
      'has two torques that could be meant',
      result({ overallResultValues: [torque(60), torque(64)] }),
      'overallResultValues',
    ],
    [
      'names no unit',
      result({ overallResultValues: [torque(60, { engineeringUnits: undefined })] }),
      'engineeringUnits',
    ],
    [
      'names a unit of something else',
      result({ overallResultValues: [torque(60, { engineeringUnits: units(17476, '°') })] }),
      'engineeringUnits',
    ],
    ['was made up', result({ overallResultValues: [torque(60)] }, { isSimulated: true }), 'isSimulated'],
    ['has no identity', { resultMetaData: {} }, 'resultMetaData.resultId'],
    ['is nothing at all', null, '(whole input)'],
  ])('is refused when it %s', (_, value, field) => {
    expect(read(value)).toMatchObject({ ok: false, failure: { kind: 'invalid', field } });
  });

  it('keeps its torque without a trace when samples are missing', () => {
    const stepTraces = [
      {
        numberOfTracePoints: 3,
        samplingInterval: 10,
        stepTraceContent: [
          { values: [0, 1, 2], physicalQuantity: QUANTITY.torque, engineeringUnits: NEWTON_METRE },
          { values: [0, 5], physicalQuantity: QUANTITY.angle, engineeringUnits: units(17476, '°') },
        ],
      },
    ];
    const told = read(result({ overallResultValues: [torque(60)], trace: { stepTraces } }));
    expect(told).toMatchObject({ value: { pull: { torque: { value: 60 }, trace: undefined, samplesLost: 3 } } });
  });
});
