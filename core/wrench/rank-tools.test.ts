import { describe, expect, it } from 'vitest';
import type { DecisionRule } from '../joint/joint.ts';
import { aJoint, torqueWindow } from '../joint/testing/a-joint.ts';
import { rankTools } from './rank-tools.ts';
import { aWrench, uncalibrated } from './testing/a-wrench.ts';

const DAY = '2026-03-01';
const named = (name: string, expandedUncertaintyPercent: number, dueOn = '2026-06-30') => ({
  wrench: aWrench({ name, resolutionNm: 1e-6 }, { expandedUncertaintyPercent, dueOn }),
});
const joint = (halfWidthNm: number, decisionRule: DecisionRule = { kind: 'simple' }) =>
  aJoint({
    decisionRule,
    stages: [
      {
        kind: 'torque',
        torque: torqueWindow(100 - halfWidthNm, 100 + halfWidthNm),
        rounds: [{ share: 1, order: { method: 'star' } }],
      },
    ],
  });

describe('choosing a wrench', () => {
  it('ranks by what is left of the window, those that something speaks against last', () => {
    const tools = [
      named('coarse', 3),
      named('overdue', 0.5, '2026-01-01'),
      named('fine', 1),
      { wrench: uncalibrated() },
    ];
    const ranked = rankTools(tools, joint(5), DAY);
    expect(ranked.map(({ tool, shareLeft }) => [tool.wrench.name, shareLeft])).toEqual([
      ['fine', expect.closeTo(0.8, 6)],
      ['coarse', expect.closeTo(0.4, 6)],
      ['overdue', expect.closeTo(0.9, 6)],
      ['Bench wrench', 0],
    ]);
  });

  it('refuses where nothing is left under the rule of the joint', () => {
    const [half] = rankTools([named('coarse', 3)], joint(2, { kind: 'guarded', factor: 0.5 }), DAY);
    expect(half).toMatchObject({ shareLeft: expect.closeTo(0.25, 6), objections: [] });
    const [whole] = rankTools([named('coarse', 3)], joint(2, { kind: 'guarded', factor: 1 }), DAY);
    expect(whole).toMatchObject({ shareLeft: 0, objections: [{ code: 'too-uncertain' }] });
    const [risk] = rankTools([named('coarse', 3)], joint(2, { kind: 'risk', maximum: 0.01 }), DAY);
    expect(risk).toMatchObject({ shareLeft: 0, objections: [{ code: 'too-uncertain' }] });
  });

  it('counts what stands between wrench and fastener', () => {
    const adapter = { id: aWrench().id, name: 'Crowfoot', lengthMm: 200, angleDeg: 0, lengthStandardUncertaintyMm: 5 };
    const [plain, through] = rankTools([named('a', 1), { ...named('b', 1), adapter }], joint(5), DAY);
    expect(plain?.shareLeft).toBeGreaterThan(through?.shareLeft ?? 1);
  });
});
