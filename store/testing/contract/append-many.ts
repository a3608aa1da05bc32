import { decide, exportRecord, type IncomingPull, verifyRecord } from '@clampwright/core/record';
import { describe, expect, it } from 'vitest';
import type { Intake, Outcome } from '../../jobs/intake.ts';
import type { Store } from '../../store.ts';
import { deciding, firstEntries, hubSheet, instant, pullNumber, technician } from '../workshop.ts';
import { failureOf, freshStore, type OpenStore, valueOf } from './folder.ts';

const sheet = hubSheet('tower 3');
const jobId = sheet.id;

async function opened(open: OpenStore): Promise<Store> {
  const store = await freshStore(open);
  valueOf(await store.jobs.open(firstEntries(sheet)));
  return store;
}

async function* inBatches(pulls: readonly IncomingPull[], size: number): AsyncGenerator<readonly IncomingPull[]> {
  for (let at = 0; at < pulls.length; at += size) yield pulls.slice(at, at + size);
}

const pullsOf = (count: number): readonly IncomingPull[] =>
  Array.from({ length: count }, (_, n) => pullNumber(jobId, n));

/** Every fifth line names a position that is not there. */
const withFaults = (count: number): readonly IncomingPull[] =>
  pullsOf(count).map((pull, n) => (n % 5 === 4 ? { ...pull, position: 7 } : pull));

const taking = (told: Outcome[], keep?: Intake<IncomingPull>['keep']): Intake<IncomingPull> => ({
  decide: (state, pull, known) =>
    decide(state, pull, { entryId: pull.id, now: instant(1000), by: technician, known: known.get(pull.id) }),
  lookUp: ({ id }) => [id],
  told: (_, outcome) => told.push(outcome),
  ...(keep ? { keep } : {}),
});

const noting = (text: string) => deciding({ kind: 'note', text }, 20 + text.length);

export function takesLongLists(open: OpenStore): void {
  describe('a long list', () => {
    it('is taken in one after the other into one whole chain', async () => {
      const store = await opened(open);
      const tally = valueOf(await store.jobs.appendMany(jobId, inBatches(pullsOf(2500), 1000), taking([])));
      expect(tally).toEqual({ added: 2500, already: 0, refused: 0, kept: true });
      const entries = valueOf(await store.jobs.entries(jobId));
      expect(verifyRecord(exportRecord(entries, {})).faults).toEqual([]);
      expect(valueOf(await store.jobs.get(jobId))).toMatchObject({ lastSeq: 2502, done: 12 });
    });

    it('keeps the good ones and tells of each that was refused', async () => {
      const store = await opened(open);
      const told: Outcome[] = [];
      const tally = valueOf(await store.jobs.appendMany(jobId, inBatches(withFaults(25), 10), taking(told)));
      expect(tally).toEqual({ added: 20, already: 0, refused: 5, kept: true });
      expect(told.map(({ kind }) => kind)).toEqual(
        Array.from({ length: 25 }, (_, n) => (n % 5 === 4 ? 'refused' : 'added')),
      );
      expect(told[4]).toMatchObject({ failure: { kind: 'invalid', field: 'position' } });
      expect(valueOf(await store.jobs.get(jobId)).lastSeq).toBe(22);
    });

    it('adds nothing the second time', async () => {
      const store = await opened(open);
      valueOf(await store.jobs.appendMany(jobId, inBatches(pullsOf(30), 10), taking([])));
      const told: Outcome[] = [];
      const tally = valueOf(await store.jobs.appendMany(jobId, inBatches(pullsOf(30), 7), taking(told)));
      expect(tally).toEqual({ added: 0, already: 30, refused: 0, kept: true });
      expect(told[3]).toMatchObject({ kind: 'already', entries: [{ id: pullNumber(jobId, 3).id }] });
    });

    it.for(['each-batch', 'all-or-nothing'] as const)('stores what stands in it twice once: %s', async (keep) => {
      const store = await opened(open);
      const twice = [...pullsOf(6), ...pullsOf(6)];
      for (const [size, expected] of [
        [12, 6],
        [4, 0],
      ] as const) {
        const tally = valueOf(await store.jobs.appendMany(jobId, inBatches(twice, size), taking([], keep)));
        expect(tally).toEqual({ added: expected, already: 12 - expected, refused: 0, kept: true });
      }
    });

    it('meets its own earlier lines also across batches', async () => {
      for (const keep of ['each-batch', 'all-or-nothing', 'nothing'] as const) {
        const store = await opened(open);
        const twice = [...pullsOf(6), ...pullsOf(6)];
        const tally = valueOf(await store.jobs.appendMany(jobId, inBatches(twice, 4), taking([], keep)));
        expect(tally).toEqual({ added: 6, already: 6, refused: 0, kept: keep !== 'nothing' });
      }
    });

    it('is kept as a whole or not at all, where that is wanted', async () => {
      const store = await opened(open);
      const refused = valueOf(
        await store.jobs.appendMany(jobId, inBatches(withFaults(25), 10), taking([], 'all-or-nothing')),
      );
      expect(refused).toEqual({ added: 20, already: 0, refused: 5, kept: false });
      expect(valueOf(await store.jobs.get(jobId)).lastSeq).toBe(2);
      const kept = valueOf(
        await store.jobs.appendMany(jobId, inBatches(pullsOf(25), 10), taking([], 'all-or-nothing')),
      );
      expect(kept).toEqual({ added: 25, already: 0, refused: 0, kept: true });
      expect(valueOf(await store.jobs.entries(jobId))).toHaveLength(27);
    });

    it('is only rehearsed, where that is wanted', async () => {
      const store = await opened(open);
      const told: Outcome[] = [];
      const tally = valueOf(await store.jobs.appendMany(jobId, inBatches(withFaults(25), 10), taking(told, 'nothing')));
      expect(tally).toEqual({ added: 20, already: 0, refused: 5, kept: false });
      expect(told[0]).toMatchObject({ kind: 'added', entries: [{ body: { judgement: { verdict: 'within' } } }] });
      expect(valueOf(await store.jobs.get(jobId)).lastSeq).toBe(2);
      valueOf(await store.jobs.appendMany(jobId, inBatches(pullsOf(1), 1), taking([])));
      expect(valueOf(await store.jobs.entries(jobId))).toHaveLength(3);
    });

    it('keeps nobody waiting while it is read, however slowly it comes', async () => {
      const store = await opened(open);
      const other = hubSheet('tower 4');
      valueOf(await store.jobs.open(firstEntries(other)));
      for (const keep of ['each-batch', 'all-or-nothing', 'nothing'] as const) {
        async function* slowly(): AsyncGenerator<readonly IncomingPull[]> {
          yield pullsOf(3);
          valueOf(await store.jobs.append(other.id, noting(keep)));
          yield pullsOf(6);
        }
        valueOf(await store.jobs.appendMany(jobId, slowly(), taking([], keep)));
      }
      expect(valueOf(await store.jobs.get(other.id)).lastSeq).toBe(5);
    });

    it('is not kept as a whole when somebody worked on the job meanwhile', async () => {
      const store = await opened(open);
      async function* disturbed(): AsyncGenerator<readonly IncomingPull[]> {
        yield pullsOf(3);
        valueOf(await store.jobs.append(jobId, noting('wind from the west')));
      }
      const taken = await store.jobs.appendMany(jobId, disturbed(), taking([], 'all-or-nothing'));
      expect(failureOf(taken)).toMatchObject({
        kind: 'conflict',
        message: expect.stringContaining('Take it in again'),
      });
      expect(valueOf(await store.jobs.get(jobId)).lastSeq).toBe(3);
      const again = await store.jobs.appendMany(jobId, inBatches(pullsOf(3), 2), taking([], 'all-or-nothing'));
      expect(valueOf(again)).toEqual({ added: 3, already: 0, refused: 0, kept: true });
    });

    it('brings its traces along', async () => {
      const store = await opened(open);
      const trace = { timeS: [0, 1], angleDeg: [0, 30], torqueNm: [0, 30] };
      for (const [n, keep] of (['each-batch', 'all-or-nothing'] as const).entries()) {
        const pull = pullNumber(jobId, n, { trace });
        const intake = { ...taking([], keep), traces: ({ id }: IncomingPull) => ({ [id]: trace }) };
        valueOf(await store.jobs.appendMany(jobId, inBatches([pull], 1), intake));
        expect(valueOf(await store.jobs.trace(pull.id))).toEqual(trace);
      }
    });

    it('stops where its source breaks off and keeps the batches before', async () => {
      const store = await opened(open);
      async function* breaking(): AsyncGenerator<readonly IncomingPull[]> {
        yield pullsOf(3);
        throw Object.assign(new Error('the file ends in the middle'), { code: 'ENOENT' });
      }
      await expect(store.jobs.appendMany(jobId, breaking(), taking([], 'all-or-nothing'))).rejects.toThrow(
        'in the middle',
      );
      expect(valueOf(await store.jobs.get(jobId)).lastSeq).toBe(2);
      await expect(store.jobs.appendMany(jobId, breaking(), taking([]))).rejects.toThrow('in the middle');
      expect(valueOf(await store.jobs.get(jobId)).lastSeq).toBe(5);
    });

    it('is refused for a job that is not there', async () => {
      const store = await freshStore(open);
      for (const keep of ['each-batch', 'all-or-nothing'] as const) {
        expect(failureOf(await store.jobs.appendMany(jobId, inBatches(pullsOf(1), 1), taking([], keep))).kind).toBe(
          'not-found',
        );
      }
    });

    it('lets others append between two batches', async () => {
      const store = await opened(open);
      const seqs: number[] = [];
      const intake = taking([]);
      const long = store.jobs.appendMany(jobId, inBatches(pullsOf(60), 10), intake);
      const pull = pullNumber(jobId, 1000);
      const between = await store.jobs.append(jobId, (state) =>
        decide(state, pull, { entryId: pull.id, now: instant(1000), by: technician }),
      );
      seqs.push(valueOf(between).entries[0]!.seq);
      expect(valueOf(await long).added).toBe(60);
      expect(seqs[0]).toBeLessThan(63);
      expect(verifyRecord(exportRecord(valueOf(await store.jobs.entries(jobId)), {})).faults).toEqual([]);
    });
  });
}
