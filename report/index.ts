export { renderCsv } from './csv.ts';
export { renderHtml } from './html/render-html.ts';
export { renderPdf } from './pdf/render-pdf.ts';
