import type { Language } from '@clampwright/core/quantity';
import type { Cell, Row, RowGroup, TableBlock } from '@clampwright/core/record';
import { HAIRLINE } from '../palette.ts';
import { drawMark } from './marks.ts';
import type { Sheet, StructureElement } from './sheet.ts';
import { headHeight, setHead, turnPage } from './table-head.ts';
import { CELL_STYLE, drawLines, drawRule, MARK_PT, MARK_ROOM_PT, PAD_PT, prepare, type Run } from './table-run.ts';
import { STYLES } from './type.ts';

/** A row taller than this share of a page is cut at the foot rather than moved over. */
const UNCUT_SHARE = 0.3;
/** Fewer lines than this of a row that is cut do not stand at the foot of a page. */
const FEWEST_LINES = 3;

/** Sets a table over as many pages as it takes; caption, titles and group are said again on each. */
export function setTable(sheet: Sheet, table: TableBlock, language: Language): void {
  const element = sheet.pdf.struct('Table', { title: table.caption });
  sheet.root.add(element);
  const run = prepare(sheet, table, language, element);
  sheet.space(4);
  sheet.need(headHeight(run));
  setHead(run);
  for (const group of table.groups) {
    if (group.title !== '') setGroupTitle(run, group);
    for (const row of group.rows) setRow(run, group, row);
  }
  element.end();
  sheet.y += 10;
}

function setGroupTitle(run: Run, group: RowGroup): void {
  const { sheet, element, table } = run;
  const lines = sheet.wrapping.linesOf(group.title, STYLES.tableStrong, sheet.width);
  if (roomLines(sheet) < lines.length + FEWEST_LINES) turnPage(run, '');
  const row = sheet.pdf.struct('TR');
  element.add(row);
  sheet.y += PAD_PT;
  sheet.tagged(row, 'TH', { scope: 'Row' }, () => sheet.lines(lines, STYLES.tableStrong, sheet.left, sheet.y));
  for (let i = 1; i < table.columns.length; i++) row.add(sheet.pdf.struct('TD'));
  row.end();
  sheet.y += lines.length * STYLES.tableStrong.leadPt + PAD_PT;
}

/** Lines that still fit on the page. */
const roomLines = (sheet: Sheet): number => Math.floor((sheet.bottom - sheet.y - PAD_PT) / CELL_STYLE.leadPt);

/** A cell while its row is set. */
interface OpenCell {
  readonly element: StructureElement;
  readonly cell: Cell;
  readonly lines: readonly string[];
}

function setRow(run: Run, group: RowGroup, row: Row): void {
  const { sheet, element, bands } = run;
  const tr = sheet.pdf.struct('TR');
  element.add(tr);
  const cells = row.cells.map((cell, index) => openCell(run, cell, index));
  for (const { element } of cells) tr.add(element);
  const wanted = bands.reduce((sum, band) => sum + tallest(cells, band), 0);
  const isTall = wanted * CELL_STYLE.leadPt > sheet.bodyHeight * UNCUT_SHARE;
  if (roomLines(sheet) < (isTall ? FEWEST_LINES : wanted)) turnPage(run, group.title);
  for (const band of bands) setBand(run, group, row, cells, band);
  tr.end();
  sheet.y += PAD_PT;
  drawRule(sheet, 0.5, HAIRLINE);
  sheet.y += PAD_PT;
}

function openCell({ sheet, slots }: Run, cell: Cell, index: number): OpenCell {
  const width = slots[index]!.widthPt - (cell.verdict ? MARK_ROOM_PT : 0);
  const lines = cell.text === '' ? [] : sheet.wrapping.linesOf(cell.text, CELL_STYLE, width);
  return { element: sheet.pdf.struct('TD'), cell, lines };
}

const tallest = (cells: readonly OpenCell[], band: readonly number[]): number =>
  Math.max(0, ...band.map((index) => cells[index]!.lines.length));

/** The cells that stand side by side, cut where the page ends. */
function setBand(run: Run, group: RowGroup, row: Row, cells: readonly OpenCell[], band: readonly number[]): void {
  const { sheet } = run;
  const wanted = tallest(cells, band);
  for (let from = 0; from < wanted; ) {
    const count = Math.min(wanted - from, roomLines(sheet));
    if (count > 0) {
      for (const index of band) drawCell(run, index, cells[index]!, row.voice, from, from + count);
      sheet.y += count * CELL_STYLE.leadPt;
      from += count;
    } else turnPage(run, group.title);
  }
}

function drawCell(run: Run, index: number, open: OpenCell, voice: Row['voice'], from: number, to: number): void {
  const { sheet, slots } = run;
  const here = open.lines.slice(from, to);
  if (here.length === 0) return;
  const { verdict } = open.cell;
  const isQuiet = voice === 'quiet';
  sheet.content(open.element, 'TD', () => {
    if (verdict && from === 0) {
      const markY = sheet.y + (CELL_STYLE.leadPt - MARK_PT) / 2 + 0.5;
      drawMark(sheet, verdict, slots[index]!.leftPt, markY, MARK_PT, isQuiet);
    }
    drawLines(sheet, slots[index]!, here, CELL_STYLE, isQuiet ? 'quiet' : 'line', verdict ? MARK_ROOM_PT : 0);
  });
}
