import { say } from '@clampwright/core/language';
import type { Language } from '@clampwright/core/quantity';
import type { Cell, TableBlock } from '@clampwright/core/record';
import { INK_COLOURS } from '../palette.ts';
import { columnWidths, type Extent } from './column-widths.ts';
import type { Sheet, StructureElement } from './sheet.ts';
import { STYLES, type Style } from './type.ts';

const GAP_PT = 8;
export const PAD_PT = 2.5;
export const MARK_PT = 7;
export const MARK_ROOM_PT = MARK_PT + 4;
/** A column that wants a longer line than this must share what is left with the others. */
const LONGEST_WISH_PT = 240;

export const STYLE = STYLES.table;

/** A table while it is set: where its columns stand and what is said again on the next page. */
export interface Run {
  readonly sheet: Sheet;
  readonly table: TableBlock;
  readonly language: Language;
  readonly element: StructureElement;
  readonly lefts: readonly number[];
  readonly widths: readonly number[];
  readonly titles: readonly (readonly string[])[];
}

export function prepare(sheet: Sheet, table: TableBlock, language: Language, element: StructureElement): Run {
  const rows = table.groups.flatMap((group) => group.rows);
  const extents = table.columns.map(({ title }, index) => {
    const cells = rows.map((row) => extentOfCell(sheet, row.cells[index]));
    return widest([sheet.wrapping.extentOf(title, STYLES.label), ...cells]);
  });
  const gaps = GAP_PT * (table.columns.length - 1);
  const widths = columnWidths(extents, sheet.width - gaps);
  const lefts = widths.map(
    (_, index) => sheet.left + widths.slice(0, index).reduce((sum, width) => sum + width + GAP_PT, 0),
  );
  const titles = table.columns.map(({ title }, index) => sheet.wrapping.linesOf(title, STYLES.label, widths[index]!));
  return { sheet, table, language, element, lefts, widths, titles };
}

function extentOfCell(sheet: Sheet, cell: Cell | undefined): Extent {
  const extent = sheet.wrapping.extentOf(cell?.text ?? '', STYLE);
  const mark = cell?.verdict ? MARK_ROOM_PT : 0;
  return {
    wordPt: extent.wordPt + mark,
    linePt: Math.min(extent.linePt + mark, Math.max(LONGEST_WISH_PT, extent.wordPt + mark)),
  };
}

/** Half a point more than measured, so that what fits is not wrapped for a rounding. */
const widest = (extents: readonly Extent[]): Extent => ({
  wordPt: Math.max(...extents.map(({ wordPt }) => wordPt)) + 0.5,
  linePt: Math.max(...extents.map(({ linePt }) => linePt)) + 0.5,
});

const titleLines = (run: Run): number => Math.max(...run.titles.map((lines) => lines.length));

export const headHeight = (run: Run): number =>
  STYLES.strong.leadPt + 4 + titleLines(run) * STYLES.label.leadPt + 2 * PAD_PT;

export function setCaption({ sheet, table, element }: Run): void {
  if (table.caption === '') return;
  const lines = sheet.wrapping.linesOf(table.caption, STYLES.strong, sheet.width);
  sheet.tagged(element, 'Caption', {}, () => sheet.lines(lines, STYLES.strong, sheet.left, sheet.y));
  sheet.y += lines.length * STYLES.strong.leadPt + 4;
}

export function setHeader(run: Run): void {
  const { sheet, element } = run;
  const row = sheet.pdf.struct('TR');
  element.add(row);
  for (const index of run.titles.keys()) sheet.tagged(row, 'TH', { scope: 'Column' }, () => drawTitle(run, index));
  row.end();
  underHeader(run);
}

function drawTitle(run: Run, index: number): void {
  drawLines(run, index, run.titles[index]!, STYLES.label, run.sheet.y, 'quiet');
}

function underHeader({ sheet, titles }: Run): void {
  const lines = Math.max(...titles.map((title) => title.length));
  sheet.y += lines * STYLES.label.leadPt + PAD_PT;
  sheet.artifact(() => rule(sheet, 0.8, INK_COLOURS.line));
  sheet.y += PAD_PT;
}

export const rule = (sheet: Sheet, thicknessPt: number, colour: string): void => {
  sheet.pdf.rect(sheet.left, sheet.y - thicknessPt / 2, sheet.width, thicknessPt).fill(colour);
};

export function drawLines(
  run: Run,
  index: number,
  lines: readonly string[],
  style: Style,
  y: number,
  ink: 'line' | 'quiet',
  indentPt = 0,
): void {
  const { sheet, table, lefts, widths } = run;
  for (const [number, line] of lines.entries()) {
    const isRight = table.columns[index]!.align === 'right';
    const x = isRight ? lefts[index]! + widths[index]! - sheet.wrapping.widthOf(line, style) : lefts[index]! + indentPt;
    sheet.line(line, style, x, y + number * style.leadPt, ink);
  }
}

/** Goes on over the page, and says again whose rows these are; only sight needs that, so it is no content. */
export function turnPage(run: Run, groupTitle: string): void {
  const { sheet, table, language } = run;
  sheet.newPage();
  const again = (text: string) => `${text} (${say(language, 'page.continued')})`;
  sheet.artifact(() => {
    if (table.caption !== '') {
      sheet.line(
        sheet.wrapping.linesOf(again(table.caption), STYLES.strong, sheet.width)[0]!,
        STYLES.strong,
        sheet.left,
        sheet.y,
      );
      sheet.y += STYLES.strong.leadPt + 4;
    }
    for (const index of run.titles.keys()) drawTitle(run, index);
  });
  underHeader(run);
  if (groupTitle === '') return;
  sheet.artifact(() =>
    sheet.line(
      sheet.wrapping.linesOf(again(groupTitle), STYLES.tableStrong, sheet.width)[0]!,
      STYLES.tableStrong,
      sheet.left,
      sheet.y + PAD_PT,
    ),
  );
  sheet.y += STYLES.tableStrong.leadPt + 2 * PAD_PT;
}
