import { join } from 'node:path';
import { openStore, type Store } from '@clampwright/store';
import { firstEntries, hubSheet } from '@clampwright/store/testing';
import BetterSqlite from 'better-sqlite3';
import { median } from './median.ts';
import type { BenchResult } from './result.ts';
import { inScratchFolder } from './scratch-folder.ts';

/** Ten million take some minutes to lay down, so they are asked for: `RECALL_TEN_MILLION=1`. */
const SIZES = [1e5, 1e6, ...(process.env['RECALL_TEN_MILLION'] === '1' ? [1e7] : [])];
const AFFECTED = 2000;
const WRENCHES = 50;
const REPEATS = 9;

const sheet = hubSheet('recall');
const identityOf = (kind: string, n: number): string =>
  `01900000-${kind}-7000-8000-${n.toString(16).padStart(12, '0')}`;
/** Every pull a minute after the one before. */
const instantOf = (n: number): string => new Date(Date.UTC(2020, 0, 1) + n * 60_000).toISOString();

async function opened(folder: string): Promise<Store> {
  const store = await openStore(folder);
  if (!store.ok) throw new Error(JSON.stringify(store.failure));
  return store.value;
}

const COLUMNS =
  'wrench_id, taken_at, pull_id, job_id, joint_ref, stage, round, position, torque_nm, shown_nm, lower_nm, upper_nm, uncertainty_nm';

/** Pulls are put into the table directly: ten million through the front door take too long. */
function layDown(folder: string, count: number): void {
  const db = new BetterSqlite(join(folder, 'clampwright.sqlite'));
  db.pragma('synchronous = off');
  const insert = db.prepare(`insert into pulls (${COLUMNS}) values (?, ?, ?, ?, 'J1', 2, 1, ?, ?, ?, 90, 110, 1.2)`);
  const each = count / WRENCHES;
  const fill = db.transaction((wrench: number) => {
    for (let n = 0; n < each; n++) {
      const torqueNm = 95 + ((n * 7919) % 1000) / 100;
      insert.run(
        identityOf('000a', wrench),
        instantOf(n),
        identityOf('000b', wrench * each + n),
        sheet.id,
        (n % 6) + 1,
        torqueNm,
        torqueNm,
      );
    }
  });
  for (let wrench = 0; wrench < WRENCHES; wrench++) fill(wrench);
  db.close();
}

async function timed(work: () => Promise<number> | number): Promise<number> {
  const startMs = performance.now();
  const found = await work();
  const elapsedMs = performance.now() - startMs;
  if (found !== AFFECTED) throw new Error(`${found} pulls were found, not ${AFFECTED}`);
  return elapsedMs;
}

async function atSize(folder: string, count: number): Promise<BenchResult> {
  process.stderr.write(`  laying down ${count.toLocaleString('en')} pulls …\n`);
  const first = await opened(folder);
  await first.jobs.open(firstEntries(sheet));
  await first.close();
  layDown(folder, count);
  const store = await opened(folder);
  const db = new BetterSqlite(join(folder, 'clampwright.sqlite'), { readonly: true });
  const scan = db.prepare(
    `select ${COLUMNS} from pulls where +wrench_id = ? and +taken_at > ? and +taken_at <= ? order by taken_at`,
  );
  const wrenchId = identityOf('000a', Math.floor(WRENCHES / 2));
  const end = count / WRENCHES;
  const before = Math.max(0, end - AFFECTED);
  const span = { after: before === 0 ? '2000' : instantOf(before - 1), to: instantOf(end) };
  const ours = async () => {
    const pulls = await store.pulls.of(wrenchId, span);
    if (!pulls.ok) throw new Error(JSON.stringify(pulls.failure));
    return pulls.value.length;
  };
  const peer = () => scan.all(wrenchId, span.after, span.to).length;
  const pairs = [];
  for (let n = -1; n < (count >= 1e7 ? 3 : REPEATS); n++) {
    const pair = { ours: await timed(ours), peer: await timed(peer) };
    if (n >= 0) pairs.push(pair);
  }
  await store.close();
  db.close();
  return {
    name: `${AFFECTED.toLocaleString('en')} pulls of a recall among ${count.toLocaleString('en')}`,
    ours: median(pairs.map((pair) => pair.ours)),
    peer: median(pairs.map((pair) => pair.peer)),
    unit: 'ms',
    ratio: median(pairs.map((pair) => pair.ours / pair.peer)),
    note: 'Peer: the database’s own scan of the whole table for the same pulls. Ours reads job and limits with them; medians by turns; lower is faster.',
  };
}

/** Time to find the pulls of a recall, whatever the number of pulls beside them. */
export async function run(): Promise<BenchResult[]> {
  const results: BenchResult[] = [];
  for (const count of SIZES) results.push(await inScratchFolder((folder) => atSize(folder, count)));
  return results;
}
