import { incomingPullSchema } from '@clampwright/core/record';
import { done, openedSample, taking, testId } from '@clampwright/core/record/testing';
import { describe, expect, it } from 'vitest';
import { type PullContext, typedPull } from './typed-pull.ts';

const cell = done(openedSample(), taking).state.joints[0]!.cells[0]![0]!;
const context: PullContext = {
  id: testId(1),
  cell,
  wrenchId: testId(8001),
  unit: 'lbf·ft',
  language: 'en',
  nowIso: '2026-03-01T08:00:00.000Z',
};

describe('a typed pull', () => {
  it('keeps what was typed beside the converted figure', () => {
    const pull = typedPull({ torque: ' 100.0 ', angle: undefined }, context);
    if (!pull.ok) throw new Error('refused');
    expect(pull.value.shown.torque).toEqual({ text: '100.0', unit: 'lbf·ft' });
    // 1 lbf·ft = 1.355 817 948 331 400 4 N·m exactly (1 lbf = 4.448 221 615 260 5 N, 1 ft = 0.3048 m)
    expect(pull.value.shownTorqueNm).toBeCloseTo(135.58179483314004, 9);
  });

  it('is what the record takes, with the place and the attempt', () => {
    const pull = typedPull({ torque: '100', angle: '35' }, context);
    if (!pull.ok) throw new Error('refused');
    expect(incomingPullSchema.parse(pull.value)).toMatchObject({ position: 1, stage: 1, round: 1, attempt: 1 });
    expect(pull.value.shownAngleDeg).toBe(35);
  });

  it.each([
    ['en', '12,5', 'torque'],
    ['de', '12.5', 'torque'],
    ['en', '1,234', 'torque'],
    ['en', '-5', 'torque'],
    ['en', '', 'torque'],
  ] as const)('in %s refuses a torque of “%s”', (language, torque, field) => {
    const pull = typedPull({ torque, angle: undefined }, { ...context, language });
    expect(pull).toMatchObject({ ok: false, failure: { kind: 'invalid', field } });
  });

  it('names the angle where the angle is not to be read', () => {
    const pull = typedPull({ torque: '100', angle: '6O' }, context);
    expect(pull).toMatchObject({ ok: false, failure: { kind: 'invalid', field: 'angle' } });
  });
});
