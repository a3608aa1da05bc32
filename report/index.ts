export { type DueDay, renderCalendar } from './calendar.ts';
export { renderCsv } from './csv.ts';
export { readDcc } from './dcc/read-dcc.ts';
export { type DccFacts, writeDcc } from './dcc/write-dcc.ts';
export { renderHtml } from './html/render-html.ts';
export { type Label, renderLabels } from './labels.ts';
export { renderPdf } from './pdf/render-pdf.ts';
