import type { Document } from '@clampwright/core/record';

const LONG = 'Ein langer Grund mit „Anführung“, <Klammern> & Zeichen, der über viele Zeilen läuft. '.repeat(24).trim();

/** A document with every kind of block, texts that try the renderers, and a table over several pages. */
export const everyBlock: Document = {
  title: 'Every block <b>there</b> is',
  subject: 'and "what" it does to \' renderers',
  language: 'de',
  paper: 'Letter',
  datedAt: '2026-03-04T10:11:12.000Z',
  banner: 'Banner & sign',
  reference: 'R-1 <script>',
  blocks: [
    {
      kind: 'facts',
      size: 'big',
      facts: ['1', '22', '333', '4 of 4', '5'].map((value) => ({ label: `figure ${value}`, value })),
    },
    { kind: 'heading', level: 1, text: 'Heading' },
    { kind: 'heading', level: 2, text: 'Smaller heading' },
    { kind: 'paragraph', text: LONG },
    {
      kind: 'facts',
      size: 'normal',
      facts: [
        { label: 'Label', value: LONG },
        { label: 'Empty', value: '' },
      ],
    },
    { kind: 'note', tone: 'exception', title: 'Exceptions', lines: [LONG, LONG, LONG] },
    { kind: 'note', tone: 'caution', title: 'Caution', lines: ['one line'] },
    {
      kind: 'table',
      name: 'long',
      caption: 'A table over pages',
      columns: [
        { title: 'No.', align: 'right' },
        { title: 'Verdict', align: 'left' },
        { title: 'Text', align: 'left' },
        { title: 'Remark', align: 'left', place: 'below' },
      ],
      groups: [1, 2].map((group) => ({
        title: `Group ${group}`,
        rows: Array.from({ length: 60 }, (_, index) => ({
          voice: index % 7 === 3 ? 'quiet' : 'plain',
          cells: [
            { text: `${group}.${index}` },
            { text: 'over', verdict: 'over' },
            { text: index % 11 === 5 ? LONG : 'short' },
            { text: index % 9 === 4 ? LONG : '' },
          ],
        })),
      })),
    },
    { kind: 'table', name: 'empty', caption: '', columns: [{ title: 'Nothing', align: 'left' }], groups: [] },
    { kind: 'pageBreak' },
    {
      kind: 'drawing',
      caption: 'Two marks',
      alt: 'one within, one not yet done',
      viewBox: { x: -50, y: -20, width: 100, height: 40 },
      paths: [
        { d: 'M-40 -10H40V10H-40Z', xMm: 0, yMm: 0, ink: 'line', filled: false, strokeMm: 0.5 },
        { d: 'M-4 0A4 4 0 0 1 4 0A4 4 0 0 1 -4 0Z', xMm: -20, yMm: 0, ink: 'within', filled: true, strokeMm: 0.5 },
      ],
      labels: [{ text: '1', xMm: -20, yMm: 7, sizeMm: 4, ink: 'line' }],
      key: [
        { verdict: 'within', text: 'within' },
        { verdict: 'none', text: 'not yet done' },
      ],
    },
    {
      kind: 'seal',
      facts: [{ label: 'Head', value: 'ab'.repeat(32) }],
      barcode: { content: 'EVERY-BLOCK/1', alt: 'the seal again' },
      text: 'How to verify.',
    },
  ],
};
