import { writeFileSync } from 'node:fs';
import { invalid } from '@clampwright/core/failure';
import { LANGUAGES, type Language } from '@clampwright/core/quantity';
import { exportRecord, type RecordFile, recordDocument } from '@clampwright/core/record';
import { renderCsv, renderHtml, renderPdf } from '@clampwright/report';
import { jobRecord } from '@clampwright/server';
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
  const file = await withStore(data, (store) => jobRecord(store, jobId));
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
