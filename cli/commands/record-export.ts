import { ok } from '@clampwright/core/failure';
import { type RecordFile, recordDocument, recordText } from '@clampwright/core/record';
import { renderCsv, renderHtml, renderPdf } from '@clampwright/report';
import { jobRecord, type Outcome, recordFileName } from '@clampwright/server';
import { sha256 } from '@clampwright/store';
import type { Format, LANGUAGES, PAPERS } from '../choices.ts';
import { dataFolder } from '../data-folder.ts';
import { withStore } from '../open.ts';
import { answer, remark } from '../say.ts';
import { writeWhole } from '../write.ts';

/** What takes about a second as PDF (350 entries a second, measured with Node 20.20 on two shared cores). */
const MANY_ENTRIES = 350;

interface Wanted {
  readonly data?: string;
  readonly format: Format;
  readonly out?: string;
  readonly language: (typeof LANGUAGES)[number];
  readonly paper: (typeof PAPERS)[number];
}

/** `clampwright record export JOB`: the record of a job as a file; sealed when the job is closed. */
export async function exportJob(jobId: string, wanted: Wanted): Promise<Outcome<0>> {
  const record = await withStore(dataFolder(wanted.data), (store) => jobRecord(store, jobId));
  if (!record.ok) return record;
  const { length } = record.value.entries;
  if (length > MANY_ENTRIES) remark(`Writing ${length} entries …`);
  const target = wanted.out ?? recordFileName(record.value, wanted.format);
  const written = writeWhole(target, await render(record.value, wanted), '--out');
  if (!written.ok) return written;
  if (target !== '-') answer(target);
  if (!record.value.seal) remark('The job is not closed, so no seal stands under its record.');
  return ok(0);
}

async function render(record: RecordFile, { format, language, paper }: Wanted): Promise<string | Uint8Array> {
  switch (format) {
    case 'json':
      return recordText(record);
    case 'pdf':
      return renderPdf(recordDocument(record, language, paper, sha256));
    case 'html':
      return renderHtml(recordDocument(record, language, paper, sha256));
    case 'csv':
      return renderCsv(recordDocument(record, language, paper, sha256));
  }
}
