import type { Language } from '@clampwright/core/quantity';
import type { Cell, TableBlock } from '@clampwright/core/record';
import { columnWidths, type Extent } from './column-widths.ts';
import type { Sheet, StructureElement } from './sheet.ts';
import { STYLES, type Style } from './type.ts';

const GAP_PT = 8;
export const PAD_PT = 2.5;
export const MARK_PT = 7;
export const MARK_ROOM_PT = MARK_PT + 4;
/** A column that wants a longer line than this must share what is left with the others. */
const LONGEST_WISH_PT = 240;

export const CELL_STYLE = STYLES.table;
export const TITLE_STYLE = STYLES.label;

/** Where a column stands on the page. */
export interface Slot {
  readonly leftPt: number;
  readonly widthPt: number;
  readonly isRight: boolean;
}

/** A table while it is set. */
export interface Run {
  readonly sheet: Sheet;
  readonly table: TableBlock;
  readonly language: Language;
  readonly element: StructureElement;
  /** One for each column, also for those below. */
  readonly slots: readonly Slot[];
  /** Columns that stand side by side, then each that stands below, by index. */
  readonly bands: readonly (readonly number[])[];
}

/** Finds room for the columns: those side by side as their words want it, those below from the second column of text on. */
export function prepare(sheet: Sheet, table: TableBlock, language: Language, element: StructureElement): Run {
  const indexes = [...table.columns.keys()];
  const beside = indexes.filter((index) => table.columns[index]!.place !== 'below');
  const below = indexes.filter((index) => table.columns[index]!.place === 'below');
  const extents = beside.map((index) => extentOfColumn(sheet, table, index));
  const widths = columnWidths(extents, sheet.width - GAP_PT * (beside.length - 1));
  const lefts = widths.map((_, at) => sheet.left + widths.slice(0, at).reduce((sum, width) => sum + width + GAP_PT, 0));
  const firstText = beside.findIndex((index, at) => at > 0 && table.columns[index]!.align === 'left');
  const indent = lefts[firstText] ?? sheet.left;
  const slots = table.columns.map(({ align, place }, index): Slot => {
    if (place === 'below') return { leftPt: indent, widthPt: sheet.left + sheet.width - indent, isRight: false };
    const at = beside.indexOf(index);
    return { leftPt: lefts[at]!, widthPt: widths[at]!, isRight: align === 'right' };
  });
  return { sheet, table, language, element, slots, bands: [beside, ...below.map((index) => [index])] };
}

function extentOfColumn(sheet: Sheet, table: TableBlock, index: number): Extent {
  let widest = sheet.wrapping.extentOf(table.columns[index]!.title, TITLE_STYLE);
  for (const { rows } of table.groups) {
    for (const { cells } of rows) widest = larger(widest, extentOfCell(sheet, cells[index]));
  }
  // half a point more than measured, so that what fits is not wrapped for a rounding
  return { wordPt: widest.wordPt + 0.5, linePt: widest.linePt + 0.5 };
}

const larger = (a: Extent, b: Extent): Extent => ({
  wordPt: Math.max(a.wordPt, b.wordPt),
  linePt: Math.max(a.linePt, b.linePt),
});

function extentOfCell(sheet: Sheet, cell: Cell | undefined): Extent {
  const { wordPt, linePt } = sheet.wrapping.extentOf(cell?.text ?? '', CELL_STYLE);
  const mark = cell?.verdict ? MARK_ROOM_PT : 0;
  return { wordPt: wordPt + mark, linePt: Math.max(Math.min(linePt, LONGEST_WISH_PT), wordPt) + mark };
}

/** Draws lines of one cell from the present height down. */
export function drawLines(
  sheet: Sheet,
  slot: Slot,
  lines: readonly string[],
  style: Style,
  ink: 'line' | 'quiet',
  indentPt = 0,
): void {
  for (const [number, line] of lines.entries()) {
    const x = slot.isRight
      ? slot.leftPt + slot.widthPt - sheet.wrapping.widthOf(line.trimEnd(), style)
      : slot.leftPt + indentPt;
    sheet.line(line, style, x, sheet.y + number * style.leadPt, ink);
  }
}

export const drawRule = (sheet: Sheet, thicknessPt: number, colour: string): void =>
  sheet.artifact(() => {
    sheet.pdf.rect(sheet.left, sheet.y - thicknessPt / 2, sheet.width, thicknessPt).fill(colour);
  });
