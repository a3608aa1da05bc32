import { describe, expect, it } from 'vitest';
import { checkJoint } from '../joint/check.ts';
import { type JointContent, jointContentSchema } from '../joint/joint.ts';
import { pulledWith } from '../joint/neighbours.ts';
import { elasticInteraction } from '../layout/interaction/elastic-interaction.ts';
import { closingRounds, isUnsettled } from './closing.ts';
import { recordFile } from './export.ts';
import { predictedForces } from './predicted-forces.ts';
import { recordDocument } from './record-document.ts';
import { done, openedSample, pullOf, type SampleJob, sampleJoint, taking } from './testing/sample-job.ts';

const order = [1, 3, 2, 4];
const shares = [1.2, 0.8, 1.1, 0.9];
const interaction = [
  [1, -0.2, 0.05, -0.2],
  [-0.2, 1, -0.2, 0.05],
  [0.05, -0.2, 1, -0.2],
  [-0.2, 0.05, -0.2, 1],
];
const figures = { spread: 0.01, pulls: 4, minutes: 2, momentNm: 10 };
const circular = { method: 'circular' } as const;

/** Four bolts, 100 ± 5 N·m: one planned round, then closing rounds. */
const planned: JointContent = {
  ...sampleJoint,
  stages: [
    {
      ...sampleJoint.stages[0]!,
      rounds: [
        { share: 1, order: { method: 'own', positions: order }, positionShares: shares },
        { share: 1, order: circular, closing: { stillDeg: 2 } },
        { share: 1, order: circular, closing: { stillDeg: 2 } },
      ],
    },
  ],
  neighbours: {
    how: 'measured',
    interaction,
    note: 'load cells',
    plan: {
      stage: 1,
      finalN: 40_000,
      rounds: [{ order, shares }],
      wrenches: 1,
      planned: figures,
      compared: { ...figures, spread: 0.3 },
    },
  },
};

const begun = (): SampleJob => done(openedSample(planned), taking);
const pulls = (job: SampleJob, from: number, torques: readonly number[], angles?: readonly number[]): SampleJob =>
  torques.reduce(
    (so, torqueNm, index) => done(so, pullOf(from + index, torqueNm, angles ? { shownAngleDeg: angles[index]! } : {})),
    job,
  );
const firstRound = () =>
  pulls(
    begun(),
    500,
    order.map((position) => 100 * shares[position - 1]!),
  );

describe('rounds with targets by position', () => {
  it('are free of contradictions, and are read again as they were written', () => {
    expect(checkJoint(planned)).toEqual([]);
    expect(jointContentSchema.parse(JSON.parse(JSON.stringify(planned)))).toEqual(planned);
  });

  it('are refused where targets and positions differ in number, and where a matrix is of other bolts', () => {
    const round = { ...planned.stages[0]!.rounds[0]!, positionShares: [1, 1, 1] };
    const stages = [{ ...planned.stages[0]!, rounds: [round] }];
    const neighbours = {
      ...planned.neighbours!,
      interaction: [
        [1, 0],
        [0, 1],
      ],
    };
    expect(checkJoint({ ...planned, stages, neighbours }).map((fault) => 'field' in fault && fault.field)).toEqual([
      'stages[0].rounds[0].positionShares',
      'neighbours.interaction',
    ]);
  });

  it('are refused where a round follows a closing one', () => {
    const [first, closing] = planned.stages[0]!.rounds;
    const stages = [{ ...planned.stages[0]!, rounds: [closing!, { ...first!, positionShares: shares }] }];
    expect(checkJoint({ ...planned, stages }).map((fault) => 'field' in fault && fault.field)).toEqual([
      'stages[0].rounds[0].closing',
    ]);
  });

  it('judge each pull against the window of its own position', () => {
    const job = pulls(begun(), 500, [120, 120]);
    const [first, third] = [job.state.joints[0]!.cells[0]![0]!, job.state.joints[0]!.cells[0]![2]!];
    expect([first.verdict, third.verdict]).toEqual(['within', 'over']);
    const last = job.entries.at(-1)!.body;
    const judgement = last.kind === 'pull' ? last.judgement : undefined;
    expect(judgement?.torque?.targetNm).toBeCloseTo(110, 10);
  });

  it('are told by the record with the plan they come from', () => {
    const text = JSON.stringify(recordDocument(recordFile(firstRound().entries, {}), 'en'));
    expect(text).toContain('Targets planned for the neighbours: an estimate');
    expect(text).toContain('a measured matrix: load cells');
    expect(text).toContain('"position-targets"');
    expect(text).toContain('120.0\u00a0N·m');
  });
});

describe('forces predicted while the work goes on', () => {
  it('are those that the rounds come to when they are played through', () => {
    const { state } = firstRound();
    const force = (position: number) => 40_000 * shares[position - 1]!;
    const played = elasticInteraction({
      interaction,
      order,
      targetsN: [order.map(force)],
      atOnce: 1,
      everyPull: false,
    });
    const predicted = predictedForces(planned, state.joints[0]!);
    expect(played.ok).toBe(true);
    for (const [index, forceN] of (played.ok ? played.value.finalN : []).entries()) {
      expect(predicted!.forcesN[index]).toBeCloseTo(forceN, 6);
    }
  });

  it('begin at nothing, and are not told of a joint without a plan', () => {
    expect(predictedForces(planned, begun().state.joints[0]!)?.forcesN).toEqual([0, 0, 0, 0]);
    const { neighbours: _, ...plain } = planned;
    expect(predictedForces(plain, begun().state.joints[0]!)).toBeUndefined();
  });
});

describe('a plan for two wrenches at once', () => {
  const plan = { ...planned.neighbours!.plan!, wrenches: 2 };
  const forTwo: JointContent = { ...planned, neighbours: { ...planned.neighbours!, plan } };
  const job = pulls(
    done(openedSample(forTwo), taking),
    500,
    order.map((position) => 100 * shares[position - 1]!),
  );

  it('tells who is pulled together, in the rounds of the plan alone and while they stand', () => {
    const at = (position: number, round = 1, stages = forTwo.stages) =>
      pulledWith(plan, stages, { stage: 1, round, position });
    expect([1, 2, 3, 4].map((position) => at(position))).toEqual([[3], [4], [1], [2]]);
    expect(at(1, 2)).toEqual([]);
    expect(at(1, 1, sampleJoint.stages)).toEqual([]);
  });

  it('predicts the forces of pairs that end together', () => {
    const targetsN = [order.map((position) => 40_000 * shares[position - 1]!)];
    const played = elasticInteraction({ interaction, order, targetsN, atOnce: 2, everyPull: false });
    const predicted = predictedForces(forTwo, job.state.joints[0]!);
    for (const [index, forceN] of (played.ok ? played.value.finalN : []).entries()) {
      expect(predicted!.forcesN[index]).toBeCloseTo(forceN, 6);
    }
    expect(predicted!.forcesN[2]).not.toBeCloseTo(
      predictedForces(planned, firstRound().state.joints[0]!)!.forcesN[2]!,
      0,
    );
  });

  it('counts a bolt that was pulled again within its pair once, with its greatest torque', () => {
    const again = pulls(done(openedSample(forTwo), taking), 500, [70, 120, 110]);
    const { torqueNm } = again.state.joints[0]!.cells[0]![0]!.attempts[0]!;
    expect(torqueNm).toBe(70);
    expect(predictedForces(forTwo, again.state.joints[0]!)?.forcesN[0]).toBeCloseTo(48_000, 6);
  });

  it('is told by the record', () => {
    const text = JSON.stringify(recordDocument(recordFile(job.entries, {}), 'en'));
    expect(text).toContain('"Wrenches at once"');
  });
});

describe('closing rounds', () => {
  it('tell how far each fastener still turned, and are followed by another while something moves', () => {
    const job = pulls(firstRound(), 600, [100, 100, 100, 100], [1, 5, 0.5, 0]);
    const [round] = closingRounds(job.state.joints[0]!);
    expect(round).toMatchObject({ turnedDeg: [1, 5, 0.5, 0], moved: [2], isWhole: true, isStill: false });
    expect(job.state.joints[0]!.next).toMatchObject({ round: 3, position: 1 });
  });

  it('end the work where nothing moved: the next closing round is left out', () => {
    const job = pulls(firstRound(), 600, [100, 100, 100, 100], [1, 1.5, 0.5, 0]);
    expect(job.state.joints[0]!.next).toBeUndefined();
    const text = JSON.stringify(recordDocument(recordFile(job.entries, {}), 'en'));
    expect(text).toContain('Nothing moved further than 2.0°');
  });

  it('leave a joint unsettled where the last one allowed still moved, and the record prints each turn and says so', () => {
    const once = pulls(firstRound(), 600, [100, 100, 100, 100], [1, 5, 0.5, 0]);
    expect(isUnsettled(once.state.joints[0]!)).toBe(false);
    const twice = pulls(once, 700, [100, 100, 100, 100], [1, 4.5, 0.5, 0]);
    expect(isUnsettled(twice.state.joints[0]!)).toBe(true);
    const text = JSON.stringify(recordDocument(recordFile(twice.entries, {}), 'en'));
    for (const turned of ['5.0°', '4.5°', '0.5°']) expect(text).toContain(turned);
    expect(text).toContain('No closing round is left: the joint does not settle.');
    expect(text).not.toContain('Another closing round is due');
  });

  it('come back when a pull that showed stillness is set aside', () => {
    const still = pulls(firstRound(), 600, [100, 100, 100, 100], [1, 1.5, 0.5, 0]);
    const { lastPull } = still.state.joints[0]!;
    const job = done(still, { kind: 'set-pull-aside', pullId: lastPull!.pullId, reason: 'wrong fastener' });
    expect(job.state.joints[0]!.next).toMatchObject({ round: 2, position: 4 });
  });

  it('do not say that nothing moved where no angle was told', () => {
    const job = pulls(firstRound(), 600, [100, 100, 100, 100]);
    expect(closingRounds(job.state.joints[0]!)[0]).toMatchObject({ untold: [1, 2, 3, 4], isStill: false });
    expect(job.state.joints[0]!.next).toMatchObject({ round: 3 });
  });
});
