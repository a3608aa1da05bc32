import { LANGUAGES } from '@clampwright/core/quantity';
import { type Document, PAPERS } from '@clampwright/core/record';
import { renderCsv, renderHtml, renderPdf } from '@clampwright/report';
import { z } from 'zod';

/** In which language and on which paper. */
export const paperQuery = z.strictObject({
  language: z.enum(LANGUAGES).default('en'),
  paper: z.enum(PAPERS).default('A4'),
});

interface Form {
  readonly extension: 'pdf' | 'html' | 'csv';
  readonly type: string;
  readonly render: (document: Document) => string | Promise<Uint8Array>;
  readonly headers?: Readonly<Record<string, string>>;
}

/** Forms in which a document is given. HTML carries its style in itself and has no script. */
export const PAPER_FORMS = [
  { extension: 'pdf', type: 'application/pdf', render: renderPdf },
  {
    extension: 'html',
    type: 'text/html; charset=utf-8',
    render: renderHtml,
    headers: { 'content-security-policy': "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'" },
  },
  { extension: 'csv', type: 'text/csv; charset=utf-8', render: renderCsv },
] as const satisfies readonly Form[];

/** @param name of the file, without its extension */
export async function paperResponse(form: Form, document: Document, name: string): Promise<Response> {
  const rendered = await form.render(document);
  return new Response(rendered, {
    headers: {
      'content-type': form.type,
      'content-disposition': `${form.extension === 'html' ? 'inline' : 'attachment'}; filename="${name}.${form.extension}"`,
      'cache-control': 'no-store',
      ...form.headers,
    },
  });
}
