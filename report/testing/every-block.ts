import type { Document, PlotBlock } from '@clampwright/core/record';

const LONG = 'Ein langer Grund mit „Anführung“, <Klammern> & Zeichen, der über viele Zeilen läuft. '.repeat(24).trim();

/** Every mark that a plot has, and every kind of bar. */
const PLOTS: readonly PlotBlock[] = [
  {
    kind: 'plot',
    name: 'every-mark',
    about: 'J1 <joint>',
    picture: {
      kind: 'plot',
      title: 'Force & angle',
      plot: {
        x: { label: 'Position', ticks: [1, 2, 3, 4].map((at) => ({ at, text: `N${at}` })), from: 0, to: 5 },
        y: { label: 'Force, kN', from: 0 },
        marks: [
          { kind: 'window', name: 'Window', along: 'y', from: 20, to: 30, reads: '20 kN – 30 kN' },
          {
            kind: 'band',
            name: 'Scatter',
            points: [
              { x: 0, low: 10, high: 15 },
              { x: 5, low: 14, high: 22 },
            ],
          },
          { kind: 'bars', name: 'Force', breadth: 0.6, points: [1, 2, 3].map((x) => ({ x, y: 20 + x })) },
          { kind: 'bars', name: 'Outside', breadth: 0.6, isHatched: true, points: [{ x: 4, y: 34 }] },
          {
            kind: 'line',
            name: 'Mean',
            points: [
              { x: 0, y: 22 },
              { x: 5, y: 22 },
            ],
          },
          {
            kind: 'line',
            name: 'Wanted',
            isDashed: true,
            points: [
              { x: 0, y: 25 },
              { x: 5, y: 25 },
            ],
          },
          ...(['dot', 'ring', 'cross'] as const).map((sign, index) => ({
            kind: 'points' as const,
            name: `Measured ${sign}`,
            sign,
            points: [{ x: index + 1, y: 26 + index, low: 24 + index, high: 27 + index }],
          })),
          { kind: 'limit', name: 'Yield', along: 'y', at: 38, reads: '38 kN' },
          { kind: 'limit', name: 'Stop', along: 'x', at: 2.5 },
          { kind: 'point', name: 'Peak', at: { x: 4, y: 34 }, reads: '34 kN' },
        ],
      },
    },
  },
  {
    kind: 'plot',
    name: 'shares',
    about: '',
    picture: {
      kind: 'shares',
      title: 'Shares',
      parts: [0.1, 0.4, 0.5].map((share, index) => ({ name: `Part ${index}`, share, text: `${share * 100} %` })),
    },
  },
  {
    kind: 'plot',
    name: 'margins',
    about: '',
    picture: {
      kind: 'bars',
      title: 'Margins',
      whole: 2,
      limit: { at: 1, text: 'what is asked for' },
      parts: [
        { name: 'Holds', share: 1.6, text: '1.6', verdict: 'within', note: 'ISO 898-1' },
        { name: 'Fails', share: 0.7, text: '0.7', verdict: 'over', note: 'VDI 2230-1, R8' },
        { name: 'Endless', share: 1e9, text: '–' },
      ],
    },
  },
];

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
    ...PLOTS,
    {
      kind: 'seal',
      facts: [{ label: 'Head', value: 'ab'.repeat(32) }],
      barcode: { content: 'EVERY-BLOCK/1', alt: 'the seal again' },
      text: 'How to verify.',
    },
  ],
};
