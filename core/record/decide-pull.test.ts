import { describe, expect, it } from 'vitest';
import { decide } from './decide.ts';
import { findCell } from './fold.ts';
import {
  contextFor,
  done,
  openedSample,
  pullOf,
  reader,
  sampleJoint,
  taking,
  testId,
  turnOf,
} from './testing/sample-job.ts';

const taken = () => done(openedSample(), taking);

describe('recording a pull', () => {
  it('goes to the next position in the order of the round', () => {
    let job = taken();
    const seen: number[] = [];
    for (let n = 0; n < 4; n++) {
      seen.push(job.state.joints[0]!.next!.position);
      job = done(job, pullOf(200 + n, 100));
    }
    expect(seen).toEqual([1, 3, 2, 4]);
    expect(job.state.joints[0]!.next).toEqual({ jointRef: 'J1', stage: 2, round: 1, position: 1 });
  });

  it('judges at once and keeps the windows it was judged with', () => {
    const job = done(taken(), pullOf(200, 105.2));
    const body = job.entries.at(-1)!.body;
    expect(body).toMatchObject({
      kind: 'pull',
      judgement: {
        verdict: 'over',
        torque: { lowerNm: 95, targetNm: 100, upperNm: 105 },
        reasons: [{ code: 'above-upper', quantity: 'torque', value: 105.2, limit: 105 }],
      },
    });
  });

  it('refuses an unknown joint, an unknown position and an unknown stage by name', () => {
    const job = taken();
    const refused = (more: object) => decide(job.state, pullOf(300, 100, more), contextFor(job));
    expect(refused({ jointRef: 'J9' })).toMatchObject({
      ok: false,
      failure: { kind: 'invalid', field: 'jointRef', expected: 'J1' },
    });
    expect(refused({ position: 5 })).toMatchObject({
      ok: false,
      failure: { kind: 'invalid', field: 'position', expected: 'a whole number from 1 to 4' },
    });
    expect(refused({ position: 1, stage: 3 })).toMatchObject({
      ok: false,
      failure: { kind: 'invalid', field: 'stage' },
    });
  });

  it('refuses a wrench that was not taken for the joint', () => {
    const job = openedSample();
    expect(decide(job.state, pullOf(300, 100), contextFor(job))).toMatchObject({
      ok: false,
      failure: { kind: 'invalid', field: 'wrenchId' },
    });
    const other = taken();
    const stranger = pullOf(300, 100, { wrenchId: testId(8099) });
    expect(decide(other.state, stranger, contextFor(other))).toMatchObject({
      ok: false,
      failure: { kind: 'invalid', field: 'wrenchId', expected: 'Wrench (T-1)' },
    });
  });

  it('refuses loosening and figures far beyond the wrench, and names the likely slip', () => {
    const job = taken();
    expect(decide(job.state, pullOf(300, -20), contextFor(job))).toMatchObject({
      ok: false,
      failure: { field: 'shownTorqueNm' },
    });
    const absurd = decide(job.state, pullOf(300, 885), contextFor(job));
    expect(absurd).toMatchObject({
      ok: false,
      failure: { field: 'shownTorqueNm', message: expect.stringContaining('lbf·in') },
    });
  });

  it('stores the same pull once', () => {
    const job = done(taken(), pullOf(200, 100));
    const known = job.entries.at(-1)!;
    expect(decide(job.state, pullOf(200, 100), contextFor(job, { known }))).toEqual({ ok: true, value: [] });
  });

  it('refuses another pull under the same identity', () => {
    const job = done(taken(), pullOf(200, 100));
    const known = job.entries.at(-1)!;
    expect(decide(job.state, pullOf(200, 101), contextFor(job, { known }))).toMatchObject({
      ok: false,
      failure: { kind: 'conflict' },
    });
  });

  it('refuses the second of two screens on one position and shows what is there', () => {
    const job = done(taken(), pullOf(200, 100, { position: 1, attempt: 1 }));
    const second = decide(job.state, pullOf(201, 99, { position: 1, stage: 1, round: 1, attempt: 1 }), contextFor(job));
    expect(second).toMatchObject({
      ok: false,
      failure: { kind: 'conflict', current: { attemptCount: 1, last: { torqueNm: 100, verdict: 'within' } } },
    });
  });

  it('lets nobody work who only reads', () => {
    const job = taken();
    expect(decide(job.state, pullOf(300, 100), contextFor(job, { by: reader }))).toMatchObject({
      ok: false,
      failure: { kind: 'forbidden', needs: 'technician' },
    });
  });

  it('holds time when the clock jumps back, and keeps what the clock said', () => {
    const job = done(taken(), pullOf(200, 100), { now: '2026-03-01T07:00:00.000Z' });
    expect(job.entries.at(-1)).toMatchObject({ at: '2026-03-01T08:01:00.000Z', clockSaid: '2026-03-01T07:00:00.000Z' });
  });

  it('notices a device whose clock is off, and a stage that began too early', () => {
    const job = done(taken(), turnOf(200, 35, { position: 1, stage: 2, takenAt: '2031-01-01T00:00:00.000Z' }));
    const codes = findCell(job.state, { jointRef: 'J1', stage: 2, round: 1, position: 1 });
    expect(codes?.verdict).toBe('within');
    const body = job.entries.at(-1)!.body;
    expect(body.kind === 'pull' && body.judgement.reasons.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['notice-out-of-order', 'notice-device-clock']),
    );
  });
});

describe('an angle pull', () => {
  const toAngle = () => [200, 201, 202, 203].reduce((job, n) => done(job, pullOf(n, 100)), taken());

  it('is carried on when it stayed under, and judged on the sum', () => {
    const short = done(toAngle(), turnOf(210, 20));
    const cell = { jointRef: 'J1', stage: 2, round: 1, position: 1 };
    expect(findCell(short.state, cell)).toMatchObject({ verdict: 'under', need: 'pull', carriedDeg: 20 });
    const whole = done(short, turnOf(211, 14));
    expect(findCell(whole.state, cell)).toMatchObject({ verdict: 'within', need: 'nothing', attemptCount: 2 });
    expect(whole.entries.at(-1)!.body).toMatchObject({ judgement: { carriedDeg: 20 } });
  });

  it('is doubtful when it was pulled too fast', () => {
    const fast = done(toAngle(), turnOf(210, 35, { fastestDegPerS: 61 }));
    expect(fast.entries.at(-1)!.body).toMatchObject({
      judgement: {
        verdict: 'doubtful',
        reasons: expect.arrayContaining([{ code: 'too-fast', quantity: 'speed', value: 61, limit: 30 }]),
      },
    });
  });

  it('is doubtful when no angle was measured', () => {
    const blind = done(toAngle(), pullOf(210, 140));
    expect(blind.entries.at(-1)!.body).toMatchObject({ judgement: { verdict: 'doubtful' } });
  });

  it('takes the wind-up of the extension off', () => {
    const extension = { id: testId(8010), name: 'bar', lengthMm: 250, stiffnessNmPerDeg: 10 };
    const job = done(openedSample(), taking, {
      tool: { wrench: { ...contextFor(openedSample()).tool!.wrench }, extension },
    });
    const turned = done(job, turnOf(210, 39, { position: 1, stage: 2 }));
    // 140 N·m at the end, counted from 100 N·m, over 10 N·m per degree: 4 degrees of wind-up.
    expect(turned.entries.at(-1)!.body).toMatchObject({ pull: { reading: { angleDeg: 35 } } });
  });
});

it('counts an adapter in', () => {
  const adapter = { id: testId(8011), name: 'adapter', lengthMm: 100, angleDeg: 0 };
  const job = done(openedSample(), taking, { tool: { wrench: contextFor(openedSample()).tool!.wrench, adapter } });
  // 80 shown on a 400 mm lever with 100 mm straight out reach the fastener as 100.
  expect(done(job, pullOf(200, 80)).entries.at(-1)!.body).toMatchObject({
    pull: { reading: { torqueNm: 100 } },
    judgement: { verdict: 'within' },
  });
});

it('makes a guarded joint doubtful near its limit', () => {
  const guarded = { ...sampleJoint, decisionRule: { kind: 'guarded', factor: 1 } as const };
  const job = done(openedSample(guarded), taking);
  expect(done(job, pullOf(200, 104.9)).entries.at(-1)!.body).toMatchObject({ judgement: { verdict: 'doubtful' } });
  expect(done(job, pullOf(201, 100)).entries.at(-1)!.body).toMatchObject({ judgement: { verdict: 'within' } });
});

it('is doubtful when a fastener was pulled again without loosening after it went over', () => {
  const job = done(done(taken(), pullOf(200, 110)), pullOf(201, 100));
  expect(job.entries.at(-1)!.body).toMatchObject({
    judgement: { verdict: 'doubtful', reasons: [{ code: 'inside' }, { code: 'not-reworked' }] },
  });
});
