import { writeFileSync } from 'node:fs';
import { failed, invalid, ok, type Result } from '@clampwright/core/failure';
import { LANGUAGES, type Language } from '@clampwright/core/quantity';
import { exportRecord, type RecordFile, recordDocument, recordFile, type Trace } from '@clampwright/core/record';
import { renderCsv, renderHtml, renderPdf } from '@clampwright/report';
import type { Store } from '@clampwright/store';
import { withStore } from '../open.ts';
import { endWith } from '../say.ts';

const FORMATS = ['json', 'pdf', 'html', 'csv'] as const;
type Format = (typeof FORMATS)[number];

interface Wanted {
  readonly data?: string;
  readonly format: string;
  readonly out?: string;
  readonly language: string;
}

/** `clampwright record export JOB`: the record of a job as a file; sealed when the job is closed. */
export async function exportJob(
  jobId: string,
  { data, format: askedFormat, out, language: askedLanguage }: Wanted,
): Promise<void> {
  const format = FORMATS.find((known) => known === askedFormat);
  if (!format) return endWith(invalid('--format', `there is no format ${askedFormat}`, FORMATS.join(', ')).failure);
  const language = LANGUAGES.find((known) => known === askedLanguage);
  if (!language)
    return endWith(invalid('--language', `there is no language ${askedLanguage}`, LANGUAGES.join(', ')).failure);
  const file = await withStore(data, (store) => recordOf(store, jobId));
  const target = out ?? `clampwright-${jobId}.${format}`;
  const rendered = await render(file, format, language);
  try {
    writeFileSync(target, rendered);
  } catch (error) {
    return endWith({
      kind: 'unavailable',
      message: `${target} cannot be written: ${error instanceof Error ? error.message : String(error)}`,
      remedy: 'Choose another file with --out.',
    });
  }
  process.stdout.write(`${target}${file.seal ? '' : '  (the job is not closed: no seal)'}\n`);
}

async function recordOf(store: Store, jobId: string): Promise<Result<RecordFile>> {
  const entries = await store.jobs.entries(jobId);
  if (!entries.ok) return entries;
  const traces: Record<string, Trace> = {};
  for (const { id, body } of entries.value) {
    if (body.kind !== 'pull' || !body.pull.trace) continue;
    const trace = await store.jobs.trace(id);
    if (!trace.ok) return trace;
    traces[id] = trace.value;
  }
  if (entries.value.at(-1)?.body.kind !== 'closed') return ok(recordFile(entries.value, traces));
  const seal = await store.jobs.seal(jobId);
  return seal.ok ? ok(recordFile(entries.value, traces, seal.value)) : failed(seal.failure);
}

async function render(file: RecordFile, format: Format, language: Language): Promise<string | Uint8Array> {
  switch (format) {
    case 'json':
      return exportRecord(file.entries, file.traces, file.seal);
    case 'pdf':
      return renderPdf(recordDocument(file, language));
    case 'html':
      return renderHtml(recordDocument(file, language));
    case 'csv':
      return renderCsv(recordDocument(file, language));
  }
}
