import { describe, expect, it } from 'vitest';
import type { Round, Stage } from '../procedure/procedure.ts';
import { checkJoint } from './check.ts';
import { type JointContent, jointContentSchema } from './joint.ts';
import { aJoint, angleWindow, anOwnBolt, anOwnMaterial, torqueWindow } from './testing/a-joint.ts';

const round = (share = 1): Round => ({ share, order: { method: 'star' } });
const torqueStage: Stage = { kind: 'torque', torque: torqueWindow(130, 150), rounds: [round()] };
const angleStage: Stage = { kind: 'angle', angle: angleWindow(85, 95), rounds: [round()] };
const bolt = (thread: string, propertyClass = '8.8') => ({ ...aJoint().fastener, thread, propertyClass });

const mended = (content: JointContent) =>
  checkJoint(content).map((failure) => (failure.kind === 'invalid' ? failure.field : failure.kind));

describe('a joint that may be released', () => {
  it.each<[string, JointContent]>([
    ['torque in rounds', aJoint()],
    [
      'snug, torque, angle',
      aJoint({ stages: [{ ...torqueStage, kind: 'snug' }, torqueStage, { ...angleStage, angleFromNm: 130 }] }),
    ],
    [
      'torque and angle with a speed limit',
      aJoint({
        stages: [
          {
            kind: 'torque-and-angle',
            torque: torqueWindow(130, 150),
            angle: angleWindow(30, 40),
            angleFromNm: 40,
            speedLimitDegPerS: 30,
            rounds: [round()],
          },
        ],
      }),
    ],
    ['loosening alone', aJoint({ stages: [{ kind: 'loosen', rounds: [round()] }] })],
    [
      'a target out of the middle of typed limits',
      aJoint({ stages: [{ ...torqueStage, torque: { ...torqueWindow(130, 150), targetNm: 145 } }] }),
    ],
    [
      'typed in German',
      aJoint({
        stages: [
          {
            ...torqueStage,
            torque: {
              lowerNm: 12.25,
              targetNm: 12.5,
              upperNm: 12.75,
              typed: { form: 'percent', target: '12,5', percent: '2', unit: 'N·m' },
            },
          },
        ],
      }),
    ],
    [
      'without a property class',
      aJoint({ fastener: { thread: 'M16', description: '', lubricant: '', reuse: 'reusable' } }),
    ],
  ])('has no contradiction: %s', (_, content) => {
    expect(jointContentSchema.safeParse(content).success).toBe(true);
    expect(checkJoint(content)).toEqual([]);
  });
});

describe('a contradiction', () => {
  it.each<[string, Partial<JointContent>, string]>([
    ['an unknown thread', { fastener: bolt('M15x7') }, 'fastener.thread'],
    [
      'a prevailing torque that leaves nothing to clamp with',
      { fastener: { ...bolt('M16'), prevailing: { by: 'locking', highestNm: 9000 } } },
      'fastener.prevailing.highestNm',
    ],
    ['an own bolt of another name', { fastener: { ...bolt('M16'), ownBolt: anOwnBolt } }, 'fastener.thread'],
    ['class and own material', { fastener: { ...bolt('M16'), ownMaterial: anOwnMaterial } }, 'fastener.propertyClass'],
    ['an unknown class', { fastener: bolt('M16', '7.7') }, 'fastener.propertyClass'],
    ['a stage without its torque', { stages: [{ kind: 'snug', rounds: [round()] }] }, 'stages[0].torque'],
    ['a stage without its angle', { stages: [torqueStage, { ...torqueStage, kind: 'angle' }] }, 'stages[1].angle'],
    [
      'lower above upper',
      { stages: [{ ...torqueStage, torque: { ...torqueWindow(130, 150), lowerNm: 160 } }] },
      'stages[0].torque.lowerNm stages[0].torque.typed',
    ],
    [
      'a target below the window',
      { stages: [{ ...torqueStage, torque: { ...torqueWindow(130, 150), targetNm: 120 } }] },
      'stages[0].torque.targetNm',
    ],
    [
      'a target above the window',
      { stages: [torqueStage, { ...angleStage, angle: { ...angleWindow(85, 95), targetDeg: 96 } }] },
      'stages[1].angle.targetDeg',
    ],
    [
      'a window without width',
      { stages: [{ ...torqueStage, torque: torqueWindow(140, 140) }] },
      'stages[0].torque.upperNm',
    ],
    [
      'a typed window that says something else',
      { stages: [{ ...torqueStage, torque: { ...torqueWindow(130, 150), typed: torqueWindow(130, 155).typed } }] },
      'stages[0].torque.typed',
    ],
    ['an angle stage before anything is snug', { stages: [angleStage, torqueStage] }, 'stages[0].kind'],
    [
      'an angle stage after loosening',
      { stages: [torqueStage, { kind: 'loosen', rounds: [round()] }, angleStage] },
      'stages[2].kind',
    ],
    ['a procedure that ends loose', { stages: [torqueStage, { kind: 'loosen', rounds: [round()] }] }, 'stages[1].kind'],
    [
      'a share on an angle',
      { stages: [torqueStage, { ...angleStage, rounds: [round(0.5), round()] }] },
      'stages[1].rounds[0].share',
    ],
    [
      'a last round that stops short',
      { stages: [{ ...torqueStage, rounds: [round(0.5), round(0.7)] }] },
      'stages[0].rounds[1].share',
    ],
    [
      'angle counted from inside the torque window',
      { stages: [torqueStage, { ...angleStage, torque: torqueWindow(200, 300), angleFromNm: 200 }] },
      'stages[1].angleFromNm',
    ],
    [
      'a speed limit without an angle',
      { stages: [{ ...torqueStage, speedLimitDegPerS: 30 }] },
      'stages[0].speedLimitDegPerS',
    ],
    [
      'an own order with a repeat',
      {
        stages: [
          {
            ...torqueStage,
            rounds: [round(0.5), { share: 1, order: { method: 'own', positions: [1, 2, 3, 4, 5, 6, 7, 7] } }],
          },
        ],
      },
      'stages[0].rounds[1].order.positions[7]',
    ],
    [
      'an own order with a gap',
      { stages: [{ ...torqueStage, rounds: [{ share: 1, order: { method: 'own', positions: [1, 2] } }] }] },
      'stages[0].rounds[0].order.positions',
    ],
    ['no source of the numbers', { numbersSource: { kind: 'maker', text: '  ' } }, 'numbersSource.text'],
    [
      'a circle in inches typed as millimetres',
      { layout: { kind: 'circle', count: 8, diameterMm: 7.5, firstAngleDeg: 0, direction: 'clockwise' } },
      'layout.diameterMm',
    ],
    [
      'columns closer than a bolt is thick',
      { layout: { kind: 'rectangle', rows: 2, columns: 4, pitchXMm: 12, pitchYMm: 40, edgeOnly: false } },
      'layout.pitchXMm',
    ],
    [
      'rows closer than a bolt is thick',
      { layout: { kind: 'rectangle', rows: 2, columns: 4, pitchXMm: 40, pitchYMm: 12, edgeOnly: true } },
      'layout.pitchYMm',
    ],
    [
      'two points in one place',
      {
        layout: {
          kind: 'points',
          points: [
            { xMm: 0, yMm: 0 },
            { xMm: 90, yMm: 0 },
            { xMm: 0, yMm: 0 },
          ],
        },
      },
      'layout.points[2]',
    ],
  ])('is told with its field: %s', (_, wrong, fields) => {
    expect(mended(aJoint(wrong))).toEqual(fields.split(' '));
  });

  it('of torque and thread names the likely slip: lbf·in typed as lbf·ft', () => {
    // 420 lbf·in is 47 N·m, usual for M10 8.8; 420 lbf·ft is 569 N·m, which would break it
    const lbfFt = 1.3558179483314;
    const typed = { form: 'percent', target: '420', percent: '10', unit: 'lbf·ft' } as const;
    const torque = { lowerNm: 378 * lbfFt, targetNm: 420 * lbfFt, upperNm: 462 * lbfFt, typed };
    const [failure, ...others] = checkJoint(aJoint({ fastener: bolt('M10'), stages: [{ ...torqueStage, torque }] }));
    expect(others).toEqual([]);
    expect(failure).toMatchObject({ field: 'stages[0].torque.upperNm', message: expect.stringContaining('lbf·in') });
  });

  it('does not hide the others', () => {
    const content = aJoint({
      numbersSource: { kind: 'maker', text: ' ' },
      stages: [
        { kind: 'torque', rounds: [round()] },
        { kind: 'angle', rounds: [round()] },
      ],
    });
    expect(mended(content)).toEqual(['stages[0].torque', 'stages[1].angle', 'numbersSource.text']);
  });
});
