import { exportRecord, verifyRecord } from '@clampwright/core/record';
import { describe, expect, it } from 'vitest';
import { deciding, firstEntries, hubSheet, pullNumber } from '../workshop.ts';
import { freshFolder, type OpenStore, storeIn, valueOf } from './folder.ts';

const sheet = hubSheet('tower 3');
const jobId = sheet.id;

async function twoStores(open: OpenStore) {
  const folder = await freshFolder();
  const server = await storeIn(folder, open);
  const command = await storeIn(folder, open);
  valueOf(await server.jobs.open(firstEntries(sheet)));
  return { server, command };
}

/** What a server beside the command line relies on. */
export function keepsSideBySide(open: OpenStore): void {
  describe('two stores on one folder', () => {
    it('append in turn to one whole chain', async () => {
      const { server, command } = await twoStores(open);
      for (let n = 0; n < 12; n++)
        valueOf(await (n % 3 === 0 ? command : server).jobs.append(jobId, deciding(pullNumber(jobId, n), 10 + n)));
      const entries = valueOf(await command.jobs.entries(jobId));
      expect(entries).toHaveLength(14);
      expect(verifyRecord(exportRecord(entries, {})).faults).toEqual([]);
    });

    it('append at once without losing one', async () => {
      const { server, command } = await twoStores(open);
      const both = [server, command].flatMap((store, which) =>
        Array.from({ length: 20 }, (_, n) =>
          store.jobs.append(jobId, deciding(pullNumber(jobId, which * 20 + n), 10 + n)),
        ),
      );
      for (const result of await Promise.all(both)) valueOf(result);
      const entries = valueOf(await server.jobs.entries(jobId));
      expect(entries).toHaveLength(42);
      expect(verifyRecord(exportRecord(entries, {})).faults).toEqual([]);
    });

    it('notice what the other one stored, and not what they stored themselves', async () => {
      const { server, command } = await twoStores(open);
      const before = server.dataVersion();
      valueOf(await server.jobs.append(jobId, deciding(pullNumber(jobId, 0), 10)));
      expect(server.dataVersion()).toBe(before);
      valueOf(await command.jobs.append(jobId, deciding(pullNumber(jobId, 1), 11)));
      expect(server.dataVersion()).not.toBe(before);
    });

    it('tell which jobs got entries since', async () => {
      const { server, command } = await twoStores(open);
      const other = hubSheet('tower 4');
      valueOf(await server.jobs.open(firstEntries(other)));
      const { mark } = valueOf(await server.jobs.changedSince(0));
      expect(valueOf(await server.jobs.changedSince(mark))).toEqual({ mark, jobs: [] });
      valueOf(await command.jobs.append(other.id, deciding(pullNumber(other.id, 0), 10)));
      const since = valueOf(await server.jobs.changedSince(mark));
      expect(since.jobs).toEqual([{ id: other.id, lastSeq: 3 }]);
      expect(since.mark).toBeGreaterThan(mark);
    });
  });
}
