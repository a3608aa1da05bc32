import { describe, expect, it } from 'vitest';
import type { JointContent } from '../joint/joint.ts';
import type { Command } from './command.ts';
import { decide } from './decide.ts';
import { findCell } from './fold.ts';
import {
  contextFor,
  done,
  lead,
  openedSample,
  pullOf,
  type SampleJob,
  sampleJoint,
  taking,
  technician,
  testId,
  turnOf,
} from './testing/sample-job.ts';

const first = { jointRef: 'J1', stage: 1, round: 1, position: 1 };
const taken = (content: JointContent = sampleJoint) => done(openedSample(content), taking);
const loosened: Command = { kind: 'rework', jointRef: 'J1', position: 1, how: 'loosened', reason: 'too tight' };
const withRework = (rework: Partial<JointContent['rework']>): JointContent => ({
  ...sampleJoint,
  rework: { ...sampleJoint.rework, ...rework },
});
const needAt = (job: SampleJob, ref = first) => findCell(job.state, ref)?.need;

describe('what is not within', () => {
  it('waits for loosening, is repeated, and every attempt stays in sight', () => {
    let job = done(taken(), pullOf(200, 110));
    expect(needAt(job)).toBe('loosen');
    expect(job.state.joints[0]!.next).toEqual(first);
    job = done(job, loosened);
    expect(needAt(job)).toBe('pull');
    job = done(job, pullOf(201, 101));
    expect(findCell(job.state, first)).toMatchObject({
      need: 'nothing',
      verdict: 'within',
      attempts: [
        { verdict: 'over', standing: 'undone' },
        { verdict: 'within', standing: 'stands' },
      ],
    });
  });

  it.each([
    ['replace-fastener', 'replace'],
    ['ask-lead', 'lead'],
  ] as const)('follows the rule %s', (rule, need) => {
    expect(needAt(done(taken(withRework({ rule })), pullOf(200, 110)))).toBe(need);
  });

  it('is carried on without loosening while it stayed under, if the joint allows it', () => {
    expect(needAt(done(taken(), pullOf(200, 60)))).toBe('pull');
    expect(needAt(done(taken(withRework({ underContinues: false })), pullOf(200, 60)))).toBe('loosen');
  });

  it('asks the lead when the attempts are used up', () => {
    let job = taken(withRework({ maximumAttempts: 2 }));
    job = done(done(job, pullOf(200, 110)), loosened);
    job = done(job, pullOf(201, 111));
    expect(needAt(job)).toBe('lead');
    expect(decide(job.state, loosened, contextFor(job))).toMatchObject({
      ok: false,
      failure: { kind: 'forbidden', needs: 'lead' },
    });
    const ordered = done(job, loosened, { lead });
    expect(needAt(ordered)).toBe('pull');
    expect(ordered.entries.at(-1)!.body).toMatchObject({ orderedBy: { name: 'Lead' } });
  });

  it('lets the others of the round go on while the lead is waited for, but not the next stage', () => {
    let job = done(taken(withRework({ rule: 'ask-lead' })), pullOf(200, 110));
    expect(job.state.joints[0]!.next?.position).toBe(3);
    for (const n of [201, 202, 203]) job = done(job, pullOf(n, 100));
    expect(job.state.joints[0]!.next).toEqual(first);
  });

  it('begins the position again from the first stage once it was loosened', () => {
    let job = [200, 201, 202, 203].reduce((at, n) => done(at, pullOf(n, 100)), taken());
    job = done(job, turnOf(210, 55));
    job = done(job, loosened);
    expect(job.state.joints[0]!.next).toEqual(first);
  });

  it('refuses to undo where nothing stands', () => {
    expect(decide(taken().state, loosened, contextFor(taken()))).toMatchObject({
      ok: false,
      failure: { kind: 'conflict' },
    });
  });
});

describe('the lead’s word', () => {
  const over = () => done(taken(withRework({ rule: 'ask-lead' })), pullOf(200, 106));
  const accept: Command = { kind: 'accept', cell: first, reason: 'checked by length' };

  it('is needed to accept', () => {
    const job = over();
    expect(decide(job.state, accept, contextFor(job))).toMatchObject({
      ok: false,
      failure: { kind: 'forbidden', needs: 'lead' },
    });
    const accepted = done(job, accept, { lead });
    expect(findCell(accepted.state, first)).toMatchObject({
      verdict: 'over',
      need: 'nothing',
      acceptedBy: { name: 'Lead' },
    });
  });

  it('takes nothing of a person into the record but name, role and identity', () => {
    const careless = { ...lead, pin: '1234' };
    const accepted = done(over(), accept, { by: careless, lead: careless });
    expect(JSON.stringify(accepted.entries)).not.toContain('1234');
  });

  it('can be given by the lead who works', () => {
    expect(needAt(done(over(), accept, { by: lead }))).toBe('nothing');
  });

  it('is not asked where nothing waits', () => {
    const job = done(taken(), pullOf(200, 100));
    expect(decide(job.state, accept, contextFor(job, { lead }))).toMatchObject({
      ok: false,
      failure: { kind: 'conflict' },
    });
  });

  it('lapses with another pull on the position', () => {
    const again = done(done(over(), accept, { lead }), pullOf(201, 107, { position: 1, stage: 1, round: 1 }));
    expect(findCell(again.state, first)?.acceptedBy).toBeUndefined();
  });
});

describe('mending', () => {
  const third = { ...first, position: 3 };

  it('moves the last pull to its right position and leaves a trace of it', () => {
    const job = done(taken(), pullOf(200, 100));
    const move: Command = { kind: 'move-pull', pullId: testId(200), to: third, reason: 'was on position 3' };
    const body = job.entries.at(-1)!.body;
    const moved = done(job, move, body.kind === 'pull' ? { pulled: body.pull } : {});
    expect(findCell(moved.state, first)).toMatchObject({
      need: 'pull',
      verdict: undefined,
      attempts: [{ standing: 'moved' }],
    });
    expect(findCell(moved.state, third)).toMatchObject({
      need: 'nothing',
      verdict: 'within',
      attempts: [{ pullId: testId(200), standing: 'stands' }],
    });
  });

  it('sets the last pull aside with its reason', () => {
    const job = done(done(taken(), pullOf(200, 110)), {
      kind: 'set-pull-aside',
      pullId: testId(200),
      reason: 'trial on scrap',
    });
    expect(findCell(job.state, first)).toMatchObject({
      need: 'pull',
      attempts: [{ verdict: 'over', standing: 'set-aside' }],
    });
  });

  it('leaves an earlier pull to the lead', () => {
    const job = done(done(taken(), pullOf(200, 100)), pullOf(201, 100));
    const aside: Command = { kind: 'set-pull-aside', pullId: testId(200), reason: 'wrong wrench' };
    expect(decide(job.state, aside, contextFor(job))).toMatchObject({
      ok: false,
      failure: { kind: 'forbidden', needs: 'lead' },
    });
    expect(decide(job.state, aside, contextFor(job, { by: lead }))).toMatchObject({ ok: true });
  });

  it('knows no pull that was set aside before', () => {
    const job = done(done(taken(), pullOf(200, 100)), {
      kind: 'set-pull-aside',
      pullId: testId(200),
      reason: 'wrong wrench',
    });
    const again: Command = { kind: 'set-pull-aside', pullId: testId(200), reason: 'wrong wrench' };
    expect(decide(job.state, again, contextFor(job))).toMatchObject({ ok: false, failure: { kind: 'not-found' } });
  });
});

describe('the end of a job', () => {
  const finished = () => {
    const torqued = [200, 201, 202, 203].reduce((job, n) => done(job, pullOf(n, 100)), taken());
    return [210, 211, 212, 213].reduce((job, n) => done(job, turnOf(n, 35)), torqued);
  };
  const signing: Command = { kind: 'sign-off', statement: 'All done as ordered.' };

  it('is not signed off while something waits', () => {
    const job = taken();
    expect(decide(job.state, signing, contextFor(job))).toMatchObject({
      ok: false,
      failure: { kind: 'conflict', current: { waiting: [first] } },
    });
  });

  it('is signed off, then closed, and then takes nothing more', () => {
    expect(decide(finished().state, { kind: 'close' }, contextFor(finished()))).toMatchObject({
      ok: false,
      failure: { kind: 'conflict' },
    });
    const closed = done(done(finished(), signing), { kind: 'close' });
    expect(closed.state.status).toBe('closed');
    expect(decide(closed.state, pullOf(300, 100), contextFor(closed))).toMatchObject({
      ok: false,
      failure: { kind: 'conflict', message: expect.stringContaining('closed') },
    });
  });

  it('lets a sign-off lapse when work goes on', () => {
    const job = done(done(finished(), signing), loosened, { by: technician });
    expect(job.state.status).toBe('open');
    expect(job.state.joints[0]!.next).toEqual(first);
  });
});
