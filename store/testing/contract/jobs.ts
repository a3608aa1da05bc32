import { exportRecord, publicKeyOf, sealChain, type Trace, verifyRecord } from '@clampwright/core/record';
import { describe, expect, it } from 'vitest';
import type { Store } from '../../store.ts';
import { deciding, firstEntries, hubSheet, identity, instant, lead, pullNumber } from '../workshop.ts';
import { failureOf, freshFolder, freshStore, type OpenStore, storeIn, valueOf } from './folder.ts';

const sheet = hubSheet('tower 3');
const jobId = sheet.id;

async function opened(open: OpenStore): Promise<Store> {
  const store = await freshStore(open);
  valueOf(await store.jobs.open(firstEntries(sheet)));
  return store;
}

const pulled = (store: Store, n: number, change = {}) => {
  const pull = pullNumber(jobId, n, change);
  return store.jobs.append(jobId, deciding(pull, 10 + n), { lookUp: [pull.id] });
};

/** Twelve torque windows met: both hubs done, signed off. */
async function finished(store: Store): Promise<void> {
  for (let n = 0; n < 24; n++) {
    const torqueNm = n < 12 ? 30 : 100;
    const shown = { torque: { text: torqueNm.toFixed(1), unit: 'N·m' } };
    valueOf(await pulled(store, n, { stage: n < 12 ? 1 : 2, shown, shownTorqueNm: torqueNm }));
  }
  valueOf(await store.jobs.append(jobId, deciding({ kind: 'sign-off', statement: 'done by the book' }, 100)));
}

export function keepsJobs(open: OpenStore): void {
  describe('jobs', () => {
    it('gives entries back in their order as one whole chain, also after it was closed', async () => {
      const folder = await freshFolder();
      const before = valueOf(await open(folder));
      valueOf(await before.jobs.open(firstEntries(sheet)));
      for (let n = 0; n < 20; n++) valueOf(await pulled(before, n));
      await before.close();
      const entries = valueOf(await (await storeIn(folder, open)).jobs.entries(jobId));
      expect(entries.map(({ seq }) => seq)).toEqual(Array.from({ length: 22 }, (_, index) => index + 1));
      expect(verifyRecord(exportRecord(entries, {})).faults).toEqual([]);
    });

    it('gives only the entries after the one named', async () => {
      const store = await opened(open);
      for (let n = 0; n < 5; n++) valueOf(await pulled(store, n));
      expect(valueOf(await store.jobs.entries(jobId, { afterSeq: 5 })).map(({ seq }) => seq)).toEqual([6, 7]);
      expect(valueOf(await store.jobs.entries(jobId, { afterSeq: 7 }))).toEqual([]);
      expect(valueOf(await store.jobs.entries(jobId, { afterSeq: 2, limit: 3 })).map(({ seq }) => seq)).toEqual([
        3, 4, 5,
      ]);
    });

    it('lists how far each job is', async () => {
      const store = await opened(open);
      valueOf(await store.jobs.open(firstEntries(hubSheet('tower 4'))));
      for (let n = 0; n < 3; n++) valueOf(await pulled(store, n));
      const [first, second] = valueOf(await store.jobs.list());
      expect(first).toMatchObject({
        id: jobId,
        title: 'Hubs of tower 3',
        assetName: 'Tower 3',
        status: 'open',
        done: 3,
        total: 24,
        lastSeq: 5,
        lastAt: instant(12),
      });
      expect(first?.retorques).toEqual([
        { jointRef: 'J1', after: 500, unit: 'h', note: 'after running in' },
        { jointRef: 'J2', after: 500, unit: 'h', note: 'after running in' },
      ]);
      expect(second).toMatchObject({ done: 0, openedAt: instant(0), lastAt: instant(1) });
    });

    it('lists jobs by where they stand', async () => {
      const store = await opened(open);
      valueOf(await store.jobs.open(firstEntries(hubSheet('tower 4'))));
      await finished(store);
      expect(valueOf(await store.jobs.list({ status: 'signed-off' })).map(({ id }) => id)).toEqual([jobId]);
      expect(valueOf(await store.jobs.list({ status: 'closed' }))).toEqual([]);
    });

    it('stores the same pull once', async () => {
      const store = await opened(open);
      const first = valueOf(await pulled(store, 0));
      const again = valueOf(await pulled(store, 0));
      expect(again).toEqual({ entries: first.entries, already: true });
      expect(valueOf(await store.jobs.get(jobId)).lastSeq).toBe(3);
    });

    it('stores the same entry once, also when the decision does not ask', async () => {
      const store = await opened(open);
      const note = deciding({ kind: 'note', text: 'wind from the west' }, 20);
      const first = valueOf(await store.jobs.append(jobId, note));
      expect(valueOf(await store.jobs.append(jobId, note))).toEqual({ entries: first.entries, already: true });
    });

    it('refuses other content under the same identity and shows what is stored', async () => {
      const store = await opened(open);
      valueOf(await pulled(store, 0));
      expect(failureOf(await pulled(store, 0, { takenAt: instant(99) }))).toMatchObject({
        kind: 'conflict',
        current: { kind: 'pull' },
      });
      valueOf(await store.jobs.append(jobId, deciding({ kind: 'note', text: 'wind from the west' }, 20)));
      const other = await store.jobs.append(jobId, deciding({ kind: 'note', text: 'wind from the east' }, 20));
      expect(failureOf(other)).toMatchObject({ kind: 'conflict', current: { body: { text: 'wind from the west' } } });
    });

    it('refuses the identity of a pull of another job', async () => {
      const store = await opened(open);
      const other = hubSheet('tower 4');
      valueOf(await store.jobs.open(firstEntries(other)));
      valueOf(await pulled(store, 0));
      const pull = pullNumber(jobId, 0);
      expect(failureOf(await store.jobs.append(other.id, deciding(pull, 10), { lookUp: [pull.id] })).kind).toBe(
        'conflict',
      );
      expect(valueOf(await store.jobs.get(other.id)).lastSeq).toBe(2);
    });

    it('adds nothing when the decision is a refusal', async () => {
      const store = await opened(open);
      expect(failureOf(await pulled(store, 0, { position: 7 }))).toMatchObject({ kind: 'invalid', field: 'position' });
      expect(valueOf(await store.jobs.get(jobId)).lastSeq).toBe(2);
    });

    it('adds nothing when the decision breaks down', async () => {
      const store = await opened(open);
      const breaking = store.jobs.append(jobId, () => {
        throw new RangeError('a bug');
      });
      await expect(breaking).rejects.toThrow('a bug');
      expect(valueOf(await pulled(store, 0)).entries[0]?.seq).toBe(3);
    });

    it('says that a job is not there', async () => {
      const store = await opened(open);
      const id = identity('nowhere');
      for (const result of [
        await store.jobs.get(id),
        await store.jobs.entries(id),
        await store.jobs.state(id),
        await store.jobs.append(id, deciding(pullNumber(id, 0), 10)),
      ]) {
        expect(failureOf(result)).toEqual({ kind: 'not-found', what: 'job', id });
      }
    });

    it('opens the same job once', async () => {
      const store = await opened(open);
      valueOf(await pulled(store, 0));
      expect(valueOf(await store.jobs.open(firstEntries(sheet))).already).toBe(true);
      expect(failureOf(await store.jobs.open(firstEntries({ ...sheet, title: 'Something else' }))).kind).toBe(
        'conflict',
      );
    });

    it('refuses a chain with a gap', async () => {
      const store = await freshStore(open);
      const [first, second] = firstEntries(sheet);
      expect(failureOf(await store.jobs.open([]))).toMatchObject({ field: 'entries' });
      expect(failureOf(await store.jobs.open([first!, { ...second!, seq: 3 }]))).toMatchObject({ field: 'entries[1]' });
      expect(valueOf(await store.jobs.list())).toEqual([]);
    });

    it('gives a trace back to the last digit', async () => {
      const store = await opened(open);
      const trace: Trace = {
        timeS: [0, 0.001, 0.1 + 0.2],
        angleDeg: [0, 1e-7, 1 / 3],
        torqueNm: [0, 29.999999999999996, 30],
      };
      const { id } = pullNumber(jobId, 0);
      const pull = pullNumber(jobId, 0, { trace });
      valueOf(await store.jobs.append(jobId, deciding(pull, 10), { lookUp: [id], traces: { [id]: trace } }));
      expect(valueOf(await store.jobs.trace(id))).toEqual(trace);
      const entries = valueOf(await store.jobs.entries(jobId));
      expect(verifyRecord(exportRecord(entries, { [id]: valueOf(await store.jobs.trace(id)) })).faults).toEqual([]);
      expect(failureOf(await store.jobs.trace(identity('none'))).kind).toBe('not-found');
    });

    it('keeps the seal with the closing entry', async () => {
      const store = await opened(open);
      await finished(store);
      expect(failureOf(await store.jobs.seal(jobId)).kind).toBe('not-found');
      const seed = new Uint8Array(32).fill(7);
      valueOf(
        await store.jobs.append(jobId, deciding({ kind: 'close' }, 101, lead), {
          seal: (last) => sealChain(last, seed, instant(101)),
        }),
      );
      const seal = valueOf(await store.jobs.seal(jobId));
      expect(seal.publicKey).toBe(publicKeyOf(seed));
      expect(verifyRecord(exportRecord(valueOf(await store.jobs.entries(jobId)), {}, seal))).toMatchObject({
        whole: true,
        sealed: true,
      });
      expect(failureOf(await pulled(store, 30)).kind).toBe('conflict');
    });
  });
}
