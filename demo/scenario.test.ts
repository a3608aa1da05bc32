import { checkJoint, orderPlanStands } from '@clampwright/core/joint';
import { exportRecord, sealChain, verifyRecord } from '@clampwright/core/record';
import { calibrationState } from '@clampwright/core/wrench';
import { describe, expect, it } from 'vitest';
import { scenarioAt } from './index.ts';

const now = new Date('2026-03-01T09:00:00.000Z');
const scenario = scenarioAt(now);

describe('the invented workshop', () => {
  it('has joints that a lead could release', () => {
    expect(scenario.joints.map(({ content }) => checkJoint(content))).toEqual(scenario.joints.map(() => []));
    expect(scenario.joints.map(({ content }) => content.stages.flatMap(({ rounds }) => rounds).length)).toEqual([
      3, 2, 2, 2, 4, 4,
    ]);
  });

  it('has a flange whose plan still stands', () => {
    const planned = scenario.joints.flatMap(({ content }) => (content.neighbours?.plan ? [content] : []));
    expect(planned.map(({ neighbours, stages }) => orderPlanStands(neighbours!.plan!, stages))).toEqual([true]);
  });

  it('has one wrench overdue and one due soon', () => {
    const states = scenario.wrenches.map((wrench) => calibrationState(wrench, '2026-03-01'));
    expect(states).toEqual(['valid', 'valid', 'valid', 'overdue', 'soon']);
  });

  it('has one job finished, one half done, and some to begin', () => {
    const progress = scenario.jobs.map(({ state }) => {
      const cells = state.joints.flatMap(({ cells }) => cells.flat());
      return [state.status, cells.filter(({ need }) => need === 'nothing').length, cells.length];
    });
    expect(progress).toEqual([
      ['closed', 40, 40],
      ['open', expect.any(Number), 72],
      ['open', 0, 60],
      ['open', 0, 12],
    ]);
    expect(progress[1]![1]).toBeGreaterThan(36);
    expect(progress[1]![1]).toBeLessThan(72);
  });

  it('shows attempts that were not within, and how they were mended', () => {
    for (const { state } of scenario.jobs.slice(0, 2)) {
      const attempts = state.joints.flatMap(({ cells }) => cells.flat()).flatMap((cell) => cell.attempts);
      expect(attempts.some(({ verdict }) => verdict !== 'within')).toBe(true);
    }
  });

  it('has one wrench found off, with a recall of the pulls that it made', () => {
    const off = scenario.calibrations.filter(({ calibration }) => calibration.asLeft);
    expect(off.map(({ calibration }) => calibration.certificate)).toEqual(['KH-C-0419']);
    const [recall] = scenario.recalls;
    const pulls = scenario.jobs
      .flatMap(({ entries }) => entries.map(({ body }) => body))
      .filter((body) => body.kind === 'pull' && body.pull.wrenchId === recall?.wrenchId);
    expect(pulls.length).toBeGreaterThan(20);
    for (const body of pulls) {
      if (body.kind !== 'pull') continue;
      expect(body.pull.takenAt > (recall?.goodAt ?? '') && body.pull.takenAt < (recall?.foundAt ?? '')).toBe(true);
    }
  });

  it('has a record that verifies', () => {
    const [finished] = scenario.jobs;
    const seal = sealChain(finished!.entries.at(-1)!, new Uint8Array(32).fill(7), now.toISOString());
    expect(verifyRecord(exportRecord(finished!.entries, finished!.traces, seal))).toMatchObject({
      whole: true,
      sealed: true,
    });
  });

  it('is the same at every load', () => {
    expect(scenarioAt(now)).toEqual(scenario);
  });
});
