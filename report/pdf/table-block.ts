import type { Language } from '@clampwright/core/quantity';
import type { Row, RowGroup, TableBlock } from '@clampwright/core/record';
import { HAIRLINE } from '../palette.ts';
import { drawMark } from './marks.ts';
import type { Sheet } from './sheet.ts';
import {
  drawLines,
  headHeight,
  MARK_PT,
  MARK_ROOM_PT,
  PAD_PT,
  prepare,
  type Run,
  rule,
  STYLE,
  setCaption,
  setHeader,
  turnPage,
} from './table-run.ts';
import { STYLES } from './type.ts';

/** A row taller than this share of a page is cut at the foot rather than moved over. */
const UNCUT_SHARE = 0.3;

/** Sets a table over as many pages as it takes; caption, header and group are said again on each. */
export function setTable(sheet: Sheet, table: TableBlock, language: Language): void {
  const element = sheet.pdf.struct('Table', { title: table.caption });
  sheet.root.add(element);
  const run = prepare(sheet, table, language, element);
  sheet.space(4);
  sheet.need(headHeight(run) + 5 * STYLE.leadPt);
  setCaption(run);
  setHeader(run);
  for (const group of table.groups) setGroup(run, group);
  element.end();
  sheet.y += 10;
}

function setGroup(run: Run, group: RowGroup): void {
  if (group.title !== '') setGroupTitle(run, group);
  for (const row of group.rows) setRow(run, group, row);
}

function setGroupTitle(run: Run, group: RowGroup): void {
  const { sheet, element, table } = run;
  const lines = sheet.wrapping.linesOf(group.title, STYLES.tableStrong, sheet.width);
  if (sheet.y + (lines.length + 3) * STYLE.leadPt > sheet.bottom) turnPage(run, '');
  const row = sheet.pdf.struct('TR');
  element.add(row);
  sheet.tagged(row, 'TH', { scope: 'Row' }, () => sheet.lines(lines, STYLES.tableStrong, sheet.left, sheet.y + PAD_PT));
  for (let i = 1; i < table.columns.length; i++) row.add(sheet.pdf.struct('TD'));
  row.end();
  sheet.y += lines.length * STYLES.tableStrong.leadPt + 2 * PAD_PT;
}

function setRow(run: Run, group: RowGroup, row: Row): void {
  const { sheet, widths, element } = run;
  let rest = row.cells.map((cell, index) =>
    sheet.wrapping.linesOf(cell.text, STYLE, widths[index]! - (cell.verdict ? MARK_ROOM_PT : 0)),
  );
  const tr = sheet.pdf.struct('TR');
  element.add(tr);
  const cells = row.cells.map(() => sheet.pdf.struct('TD'));
  for (const cell of cells) tr.add(cell);
  let isBegun = false;
  while (rest.some((lines) => lines.length > 0)) {
    const count = linesHere(run, Math.max(...rest.map((lines) => lines.length)));
    if (count === 0) {
      turnPage(run, group.title);
      continue;
    }
    for (const [index, cell] of cells.entries()) {
      const here = rest[index]!.slice(0, count);
      if (here.length > 0) sheet.content(cell, 'TD', () => drawCell(run, index, here, row, !isBegun));
    }
    rest = rest.map((lines) => lines.slice(count));
    isBegun = true;
    sheet.y += count * STYLE.leadPt + PAD_PT;
    sheet.artifact(() => rule(sheet, 0.5, HAIRLINE));
    sheet.y += PAD_PT;
  }
  tr.end();
}

/** How many of a row's lines are set on this page; none: on the next. */
function linesHere({ sheet }: Run, wanted: number): number {
  const room = Math.floor((sheet.bottom - sheet.y - PAD_PT) / STYLE.leadPt);
  if (wanted <= room) return wanted;
  const isTall = wanted * STYLE.leadPt > sheet.bodyHeight * UNCUT_SHARE;
  return isTall && room >= 3 ? room : 0;
}

function drawCell(run: Run, index: number, lines: readonly string[], row: Row, isFirst: boolean): void {
  const { sheet, lefts } = run;
  const verdict = row.cells[index]!.verdict;
  if (verdict && isFirst)
    drawMark(
      sheet,
      verdict,
      lefts[index]!,
      sheet.y + (STYLE.leadPt - MARK_PT) / 2 + 0.5,
      MARK_PT,
      row.voice === 'quiet',
    );
  drawLines(run, index, lines, STYLE, sheet.y, row.voice === 'quiet' ? 'quiet' : 'line', verdict ? MARK_ROOM_PT : 0);
}
