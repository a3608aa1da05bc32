import { describe, expect, it } from 'vitest';
import { aJoint, angleWindow, torqueWindow } from '../joint/testing/a-joint.ts';
import type { Stage } from '../procedure/procedure.ts';
import { assessTool } from './assess.ts';
import { toolNotices } from './notices.ts';
import { aWrench, uncalibrated } from './testing/a-wrench.ts';
import type { Adapter, Tool } from './wrench.ts';

const DAY = '2026-03-01';
const round = (share: number): Stage['rounds'][number] => ({ share, order: { method: 'star' } });
const torqueStage = (lowerNm: number, upperNm: number, ...shares: readonly number[]): Stage => ({
  kind: 'torque',
  torque: torqueWindow(lowerNm, upperNm),
  rounds: (shares.length > 0 ? shares : [1]).map(round),
});
const angleStage: Stage = { kind: 'angle', angle: angleWindow(55, 65), rounds: [round(1)] };
const adapter = (lengthMm: number, angleDeg: number): Adapter => ({
  id: '00000000-0000-4000-8000-000000000002',
  name: 'Adapter',
  lengthMm,
  angleDeg,
});
const against = (tool: Tool, ...stages: Stage[]) => assessTool(tool, aJoint({ stages }), DAY);

describe('assessing a tool', () => {
  it('has nothing against a good one', () => {
    expect(against({ wrench: aWrench() }, torqueStage(90, 110, 0.5, 1), angleStage)).toEqual([]);
  });

  it('objects to a wrench never calibrated, and to one overdue', () => {
    expect(against({ wrench: uncalibrated() }, torqueStage(90, 110))).toEqual([{ code: 'never-calibrated' }]);
    expect(against({ wrench: aWrench({}, { dueOn: '2026-02-26' }) }, torqueStage(90, 110))).toEqual([
      { code: 'calibration-overdue', dueOn: '2026-02-26', daysOver: 3 },
    ]);
  });

  it('objects once a stage to settings outside the range', () => {
    const stages = [torqueStage(36, 44, 0.3, 0.4, 1), torqueStage(250, 270, 0.5, 1, 1)];
    expect(against({ wrench: aWrench() }, ...stages)).toEqual([
      { code: 'below-range', stage: 1, round: 1, settingNm: 12, lowestNm: 20 },
      { code: 'above-range', stage: 2, round: 2, settingNm: 260, highestNm: 200 },
    ]);
  });

  it('counts the adapter in: 220 N·m is out of range, 220 N·m over a 100 mm adapter is not', () => {
    const stage = torqueStage(200, 240);
    expect(against({ wrench: aWrench() }, stage)).toMatchObject([{ code: 'above-range', settingNm: 220 }]);
    expect(against({ wrench: aWrench(), adapter: adapter(100, 0) }, stage)).toEqual([]);
    expect(against({ wrench: aWrench(), adapter: adapter(100, 180) }, torqueStage(140, 160))).toEqual([]);
    expect(against({ wrench: aWrench(), adapter: adapter(100, 180) }, torqueStage(150, 170))).toMatchObject([
      { code: 'above-range', settingNm: expect.closeTo((160 * 400) / 300, 9) },
    ]);
  });

  it('objects to an adapter that cannot be, and to nothing that would follow from it', () => {
    expect(against({ wrench: aWrench(), adapter: adapter(400, 180) }, torqueStage(500, 600))).toEqual([
      { code: 'impossible-adapter', adapterMm: 400, adapterAngleDeg: 180, leverMm: 400 },
    ]);
  });

  it('objects to a wrench without angle where a stage needs one', () => {
    const { angleResolutionDeg: _, ...noAngle } = aWrench();
    expect(against({ wrench: noAngle }, torqueStage(90, 110), angleStage)).toEqual([
      { code: 'shows-no-angle', stage: 2 },
    ]);
  });

  it('objects where the uncertainty on both sides eats the window', () => {
    // U = 1 % of 100 N·m and a display of 0.1 N·m: 1.0017 N·m on either side
    expect(against({ wrench: aWrench() }, torqueStage(99, 101))).toMatchObject([{ code: 'too-uncertain', widthNm: 2 }]);
    expect(against({ wrench: aWrench() }, torqueStage(98.9, 101.1))).toEqual([]);
  });

  it('objects to steps coarser than a tenth of the window', () => {
    const coarse = aWrench({ resolutionNm: 1, angleResolutionDeg: 1 });
    expect(against({ wrench: coarse }, torqueStage(95, 105), angleStage)).toEqual([]);
    const narrow: Stage = { kind: 'angle', angle: angleWindow(56, 64), rounds: [round(1)] };
    expect(against({ wrench: coarse }, torqueStage(95.5, 104.5), narrow)).toEqual([
      { code: 'angle-too-coarse', stage: 2, resolutionDeg: 1, widthDeg: 8 },
      { code: 'torque-too-coarse', stage: 1, round: 1, resolutionNm: 1, widthNm: 9 },
    ]);
  });

  it('asks nothing of a wrench for loosening', () => {
    expect(against({ wrench: aWrench() }, { ...torqueStage(500, 600), kind: 'loosen' })).toEqual([]);
  });
});

describe('notices of a tool', () => {
  it('tell of a calibration due soon, a narrow window, an extension of unknown stiffness', () => {
    const extension = { id: '00000000-0000-4000-8000-000000000003', name: 'Bar', lengthMm: 250 };
    const tool = { wrench: aWrench({ resolutionNm: 1e-6 }, { dueOn: '2026-03-20' }), extension };
    const notices = toolNotices(tool, aJoint({ stages: [torqueStage(97, 103), angleStage] }), DAY);
    expect(notices).toEqual([
      { code: 'calibration-soon', dueOn: '2026-03-20', daysLeft: 19 },
      { code: 'uncertainty-ratio', stage: 1, round: 1, ratio: expect.closeTo(3, 9) },
      { code: 'wind-up-unknown', stage: 2 },
    ]);
  });

  it('are none for a tool without a fault', () => {
    expect(toolNotices({ wrench: aWrench() }, aJoint({ stages: [torqueStage(90, 110), angleStage] }), DAY)).toEqual([]);
  });
});
