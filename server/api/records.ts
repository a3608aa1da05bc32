import { ok } from '@clampwright/core/failure';
import { LANGUAGES, type Language } from '@clampwright/core/quantity';
import {
  PAPERS,
  type Paper,
  type RecordFile,
  recordDocument,
  recordFileSchema,
  recordText,
} from '@clampwright/core/record';
import { renderCsv, renderHtml, renderPdf } from '@clampwright/report';
import { sha256 } from '@clampwright/store';
import { z } from 'zod';
import { recordFileName } from '../records/file-name.ts';
import { jobRecord } from '../records/job-record.ts';
import { anybody } from './access.ts';
import { media } from './gives.ts';
import { jobParams } from './job-params.ts';
import { type Route, route } from './route.ts';

interface Form {
  readonly extension: 'json' | 'pdf' | 'html' | 'csv';
  readonly type: string;
  readonly schema?: z.ZodType;
  readonly render: (record: RecordFile, language: Language, paper: Paper) => string | Promise<Uint8Array>;
  readonly headers?: Readonly<Record<string, string>>;
}

const FORMS = [
  {
    extension: 'json',
    type: 'application/json',
    schema: recordFileSchema,
    render: (record) => recordText(record),
  },
  {
    extension: 'pdf',
    type: 'application/pdf',
    render: (record, language, paper) => renderPdf(recordDocument(record, language, paper, sha256)),
  },
  {
    extension: 'html',
    type: 'text/html; charset=utf-8',
    render: (record, language, paper) => renderHtml(recordDocument(record, language, paper, sha256)),
    // The page carries its style in itself and has no script.
    headers: { 'content-security-policy': "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'" },
  },
  {
    extension: 'csv',
    type: 'text/csv; charset=utf-8',
    render: (record, language, paper) => renderCsv(recordDocument(record, language, paper, sha256)),
  },
] as const satisfies readonly Form[];

const recordQuery = z.strictObject({
  language: z.enum(LANGUAGES).default('en'),
  paper: z.enum(PAPERS).default('A4'),
});

/** The record of a job in each form; of an open job too, and then without a seal. */
export const records: readonly Route[] = FORMS.map((form: Form) =>
  route({
    method: 'get',
    path: `/jobs/{id}/record.${form.extension}`,
    title: `give the record of a job as ${form.extension.toUpperCase()}`,
    access: anybody,
    takes: z.object({ params: jobParams, query: recordQuery }),
    gives: media(form.type, form.schema),
    handle: async ({ params, query }, { store }) => {
      const record = await jobRecord(store, params.id);
      if (!record.ok) return record;
      const rendered = await form.render(record.value, query.language, query.paper);
      return ok(new Response(rendered, { headers: headersFor(form, record.value) }));
    },
  }),
);

/** HTML is read where it is; the others are kept. */
function headersFor({ extension, type, headers = {} }: Form, record: RecordFile): Readonly<Record<string, string>> {
  const disposition = extension === 'html' ? 'inline' : 'attachment';
  return {
    'content-type': type,
    'content-disposition': `${disposition}; filename="${recordFileName(record, extension)}"`,
    'cache-control': 'no-store',
    ...headers,
  };
}
