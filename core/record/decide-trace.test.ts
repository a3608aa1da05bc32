import { describe, expect, it } from 'vitest';
import type { JointContent } from '../joint/joint.ts';
import { aDerivation } from '../joint/testing/a-joint.ts';
import { expectationOf } from '../trace/from-mechanics.ts';
import { madeCurve } from '../trace/testing/made-curve.ts';
import type { Trace } from './command.ts';
import { curveMechanics } from './curve-mechanics.ts';
import { decide } from './decide.ts';
import { exportRecord } from './export.ts';
import {
  contextFor,
  done,
  openedSample,
  pullOf,
  type SampleJob,
  sampleJoint,
  taking,
  testId,
} from './testing/sample-job.ts';
import { verifyRecord } from './verify.ts';

/** 20 degrees a second. */
const timed = ({ angleDeg, torqueNm }: ReturnType<typeof madeCurve>): Trace => ({
  timeS: angleDeg.map((_, i) => i / 40),
  angleDeg,
  torqueNm,
});
/** 30° of running down, then 2 N·m a degree to the target of 100 N·m, and let go. */
const sound = (slope = 2): Trace =>
  timed(madeCurve(0.5, 30 + 100 / slope, (deg) => (deg <= 30 ? 1 : 1 + slope * (deg - 30))));
const tight: Trace = timed(madeCurve(0.1, 3, (deg) => Math.min(100, 75 + 10 * deg)));

const judged = (job: SampleJob) => {
  const body = job.entries.at(-1)!.body;
  if (body.kind !== 'pull') throw new Error('no pull');
  return body;
};
const taken = () => done(openedSample(), taking);
const pulled = (trace: Trace, torqueNm = 100, n = 200, job = taken()) =>
  done(job, pullOf(n, torqueNm, { trace, position: ((n - 200) % 4) + 1 }));

const figures = { spread: 0.01, pulls: 4, minutes: 2, momentNm: 10 };
const plan = {
  stage: 1,
  finalN: 40_000,
  rounds: [{ order: [1, 3, 2, 4], shares: [1, 1, 1, 1] }],
  wrenches: 1,
  planned: figures,
  compared: figures,
};

describe('a pull with its trace', () => {
  it('stays within where the curve is sound, and keeps what is learned from', () => {
    const { judgement, pull } = judged(pulled(sound()));
    expect(judgement.verdict).toBe('within');
    expect(pull.trace?.findings).toEqual([]);
    expect(pull.trace?.figures?.slopeNmPerDeg).toBeCloseTo(2, 6);
  });

  it('is doubtful where the fastener was tight already', () => {
    const { judgement } = judged(pulled(tight));
    expect(judgement.verdict).toBe('doubtful');
    expect(judgement.reasons.map(({ code }) => code)).toEqual(['inside', 'trace-already-tight']);
  });

  it('is held to the prevailing torque that its joint states', () => {
    const forming = timed(madeCurve(0.5, 330, (deg) => Math.min(2 * deg, 40) + Math.max(0, 2 * (deg - 300))));
    const at = (highestNm?: number) => {
      const prevailing = highestNm === undefined ? {} : { prevailing: { by: 'thread-forming', highestNm } as const };
      const content = { ...sampleJoint, fastener: { ...sampleJoint.fastener, ...prevailing } };
      return judged(pulled(forming, 100, 200, done(openedSample(content), taking))).judgement;
    };
    expect(at().reasons.map(({ code }) => code)).toEqual(['inside', 'trace-crossed-thread']);
    expect(at(45)).toMatchObject({ verdict: 'within', reasons: [{ code: 'inside' }] });
    expect(at(35).verdict).toBe('doubtful');
  });

  it('is never made better by its curve', () => {
    expect(judged(pulled(sound(), 106)).judgement.verdict).toBe('over');
    expect(judged(pulled(tight, 94)).judgement.verdict).toBe('under');
  });

  it('is refused where the trace is one of loosening', () => {
    const { timeS, angleDeg, torqueNm } = sound();
    const trace = { timeS, angleDeg, torqueNm: torqueNm.map((nm) => -nm) };
    const job = taken();
    expect(decide(job.state, pullOf(200, 100, { trace }), contextFor(job))).toMatchObject({
      ok: false,
      failure: { field: 'trace', message: expect.stringContaining('loosening') },
    });
  });

  it('is held to the accepted traces of the joint once there are enough, wherever they were made', () => {
    const soft = judged(pulled(sound(1)));
    expect(soft.judgement.verdict).toBe('within');
    const figures = { slopeNmPerDeg: 2, angleFromSnugDeg: 50, prevailingTorqueNm: 1 };
    const learned = { '1/1': Array.from({ length: 8 }, () => figures) };
    const held = judged(done(taken(), pullOf(200, 100, { trace: sound(1) }), { learned }));
    expect(held.judgement).toMatchObject({
      verdict: 'doubtful',
      reasons: [{ code: 'inside' }, { code: 'trace-too-soft', quantity: 'slope' }],
    });
  });

  // slope = (T/F)·K·P/360 (elastic line, any handbook): M12 has P = 1.75 mm, 100 N·m stand for 40 kN by the plan, so
  // 165 kN/mm give 100/40000 · 165000 · 1.75/360 = 2.005 N·m a degree
  const stiff = (nPerMm: number): JointContent => ({
    ...sampleJoint,
    neighbours: {
      how: 'measured',
      complianceMmPerN: [0, 1, 2, 3].map((i) => [0, 1, 2, 3].map((j) => (i === j ? 1 / nPerMm : 0))),
      note: 'load cells',
      plan,
    },
  });
  const byMechanics = (content: JointContent) =>
    judged(done(done(openedSample(content), taking), pullOf(200, 100, { trace: sound() }))).judgement;

  it('is held to the mechanics of the joint before anything was learned', () => {
    expect(curveMechanics(stiff(165_000), 1)).toEqual({
      softestNPerMm: expect.closeTo(165_000, 6),
      stiffestNPerMm: expect.closeTo(165_000, 6),
      pitchMm: 1.75,
      torqueNm: 100,
      preloadN: 40_000,
    });
    expect(expectationOf(curveMechanics(stiff(165_000), 1)!).slopeNmPerDeg?.median).toBeCloseTo(2.005, 3);
    expect(byMechanics(stiff(165_000)).verdict).toBe('within');
    expect(byMechanics(stiff(70_000))).toMatchObject({
      verdict: 'doubtful',
      reasons: [{}, { code: 'trace-bottomed' }],
    });
  });

  it('is held to the stiffness that its joint states, with the torque and preload of its derivation', () => {
    const stated = (stiffnessNPerMm: number): JointContent => ({
      ...sampleJoint,
      fastener: { ...sampleJoint.fastener, stiffnessNPerMm },
      numbersSource: { kind: 'derived', text: 'worked out', derivation: aDerivation },
    });
    // 100.4 N·m / 54.72 kN · 224 kN/mm · 1.75 mm / 360° = 1.998 N·m a degree
    const mechanics = curveMechanics(stated(224_000), 1);
    expect(expectationOf(mechanics!).slopeNmPerDeg?.median).toBeCloseTo(1.998, 3);
    expect(byMechanics(stated(224_000)).verdict).toBe('within');
    expect(byMechanics(stated(95_000))).toMatchObject({
      verdict: 'doubtful',
      reasons: [{}, { code: 'trace-bottomed' }],
    });
    // neighbours know more: what the bolts beside it do
    expect(curveMechanics({ ...stated(95_000), ...stiff(165_000) }, 1)?.softestNPerMm).toBeCloseTo(165_000, 3);
  });

  it('is not held to mechanics that know ratios alone', () => {
    const { neighbours } = stiff(1);
    const ratios = { kind: 'neighbours', arrangement: 'circle', count: 4, neighbour: 0.1, decay: 0.5 } as const;
    const { complianceMmPerN: _, ...others } = neighbours!;
    expect(curveMechanics({ ...sampleJoint, neighbours: { ...others, model: ratios } }, 1)).toBeUndefined();
    expect(curveMechanics(sampleJoint, 1)).toBeUndefined();
  });

  it('keeps its doubt where it is moved', () => {
    const job = pulled(tight);
    const to = { jointRef: 'J1', stage: 1, round: 1, position: 3 };
    const pullId = testId(200);
    const pulledBefore = judged(job).pull;
    const moved = done(job, { kind: 'move-pull', pullId, to, reason: 'wrong one' }, { pulled: pulledBefore });
    expect(moved.entries.at(-1)!.body).toMatchObject({ judgement: { verdict: 'doubtful' } });
  });

  it('is proved by its record', () => {
    const trace = sound();
    const job = pulled(trace);
    expect(verifyRecord(exportRecord(job.entries, { [testId(200)]: trace })).faults).toEqual([]);
  });
});
