import { sayMechanics } from '../language/mechanics/say.ts';
import type { Part } from '../plot/picture.ts';
import type { Mark, Plot } from '../plot/plot.ts';
import type { Language } from '../quantity/language.ts';
import { showNumber } from '../quantity/show-number.ts';
import type { Column, PlotBlock, Row, TableBlock } from './document.ts';

/** What stands above or below a plot. */
export const plotCaption = ({ about, picture }: PlotBlock, language: Language): string =>
  about === '' ? picture.title : sayMechanics(language, 'plot.reads', { name: about, value: picture.title });

/** The figures of a plot as a table, for whoever reckons on with them or does not see the plot. */
export function plotTable(block: PlotBlock, language: Language): TableBlock {
  const { picture, name } = block;
  const [columns, rows] =
    picture.kind === 'plot' ? planeTable(picture.plot, language) : partTable(picture.parts, language);
  return { kind: 'table', name, caption: plotCaption(block, language), columns, groups: [{ title: '', rows }] };
}

const DIGITS = 6;

const figure = (value: number | undefined, language: Language): string =>
  value === undefined ? '' : showNumber(Number(value.toPrecision(DIGITS)), language);

const row = (...texts: readonly string[]): Row => ({ cells: texts.map((text) => ({ text })), voice: 'plain' });

function planeTable({ x, y, marks }: Plot, language: Language): readonly [readonly Column[], readonly Row[]] {
  const columns: readonly Column[] = [
    { title: sayMechanics(language, 'plot.mark'), align: 'left' },
    { title: x.label, align: 'right' },
    { title: y.label, align: 'right' },
    { title: sayMechanics(language, 'plot.from'), align: 'right' },
    { title: sayMechanics(language, 'plot.to'), align: 'right' },
  ];
  const atX = (value: number) => x.ticks?.find(({ at }) => at === value)?.text ?? figure(value, language);
  const rows = marks.flatMap((mark) =>
    placesOf(mark).map((place) =>
      row(
        mark.name,
        place.x === undefined ? '' : atX(place.x),
        figure(place.y, language),
        figure(place.low, language),
        figure(place.high, language),
      ),
    ),
  );
  return [columns, rows];
}

interface Place {
  readonly x?: number;
  readonly y?: number;
  readonly low?: number;
  readonly high?: number;
}

function placesOf(mark: Mark): readonly Place[] {
  switch (mark.kind) {
    case 'line':
    case 'band':
    case 'points':
    case 'bars':
      return mark.points;
    case 'window':
      return mark.along === 'y' ? [{ low: mark.from, high: mark.to }] : [{ x: mark.from }, { x: mark.to }];
    case 'limit':
      return [mark.along === 'y' ? { y: mark.at } : { x: mark.at }];
    case 'point':
      return [mark.at];
  }
}

function partTable(parts: readonly Part[], language: Language): readonly [readonly Column[], readonly Row[]] {
  const hasNotes = parts.some(({ note }) => note !== undefined);
  const columns: readonly Column[] = [
    { title: sayMechanics(language, 'plot.mark'), align: 'left' },
    { title: sayMechanics(language, 'plot.value'), align: 'right' },
    ...(hasNotes ? [{ title: sayMechanics(language, 'plot.note'), align: 'left' } as const] : []),
  ];
  return [columns, parts.map(({ name, text, note = '' }) => (hasNotes ? row(name, text, note) : row(name, text)))];
}
