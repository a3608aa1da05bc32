import { describe, expect, it } from 'vitest';
import { EXAMPLE_JOINT, EXAMPLE_TOOL } from './example.ts';
import { modelFor } from './model-for.ts';
import { preloadPerDegree, torquePerPreloadM } from './preload.ts';

const adapter = { id: '01973c3e-6a10-7000-8000-000000000002', name: 'crowfoot', lengthMm: 100, angleDeg: 0 };

describe('modelFor', () => {
  it('takes the slope from the stage that tells torque and angle', () => {
    const model = modelFor(EXAMPLE_JOINT, EXAMPLE_TOOL);
    if (!model.ok) throw new Error(model.failure.kind);
    const { joint } = model.value;
    const slopeNmPerDeg = preloadPerDegree(joint) * torquePerPreloadM(joint, 0.12, 0.12);
    expect(slopeNmPerDeg).toBeCloseTo((120 - 60) / 40, 9);
  });

  it('counts an adapter in as the setting of a wrench does', () => {
    const model = modelFor(EXAMPLE_JOINT, { ...EXAMPLE_TOOL, adapter });
    expect(model.ok && model.value.wrench.fastenerOverShown).toBeCloseTo(600 / 500, 12);
  });

  it('refuses a thread that it does not know', () => {
    const joint = { ...EXAMPLE_JOINT, fastener: { ...EXAMPLE_JOINT.fastener, thread: 'M11.7' } };
    expect(modelFor(joint, EXAMPLE_TOOL)).toMatchObject({ ok: false, failure: { kind: 'invalid' } });
  });

  it('refuses a joint that tells no torque at all', () => {
    const [first] = EXAMPLE_JOINT.stages;
    const stages = first ? [{ kind: 'check' as const, rounds: first.rounds }] : [];
    expect(modelFor({ ...EXAMPLE_JOINT, stages }, EXAMPLE_TOOL)).toMatchObject({
      ok: false,
      failure: { field: 'stages' },
    });
  });
});
