import { writeSync } from 'node:fs';
import { openStore } from '../../index.ts';
import { deciding, firstEntries, hubSheet, pullNumber } from '../workshop.ts';

/*
 * append-pulls FOLDER FIRST COUNT: appends pulls to the job `tower 3`, made if need be, and prints the number of
 * each once it was acknowledged. Written straight to the pipe: what was printed was acknowledged before.
 */
const [folder = '', first = '0', count = '1000000'] = process.argv.slice(2);
const sheet = hubSheet('tower 3');

const opened = await openStore(folder);
if (!opened.ok) throw new Error(JSON.stringify(opened.failure));
const store = opened.value;
const job = await store.jobs.open(firstEntries(sheet));
if (!job.ok) throw new Error(JSON.stringify(job.failure));
for (let n = Number(first); n < Number(first) + Number(count); n++) {
  const pull = pullNumber(sheet.id, n);
  const appended = await store.jobs.append(sheet.id, deciding(pull, 10 + n), { lookUp: [pull.id] });
  if (!appended.ok) throw new Error(JSON.stringify(appended.failure));
  writeSync(1, `${n}\n`);
}
await store.close();
