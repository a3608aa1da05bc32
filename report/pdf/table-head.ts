import { say } from '@clampwright/core/language';
import { INK_COLOURS } from '../palette.ts';
import { CELL_STYLE, drawLines, drawRule, PAD_PT, type Run, TITLE_STYLE } from './table-run.ts';
import { STYLES, type Style } from './type.ts';

const CAPTION_GAP_PT = 4;

const titleLines = ({ sheet, table, slots }: Run, index: number): readonly string[] =>
  sheet.wrapping.linesOf(table.columns[index]!.title, TITLE_STYLE, slots[index]!.widthPt);

const titlesPt = (run: Run): number =>
  Math.max(0, ...run.bands[0]!.map((index) => titleLines(run, index).length)) * TITLE_STYLE.leadPt;

/** Room for caption and titles with the first rows below them. */
export const headHeight = (run: Run): number =>
  STYLES.strong.leadPt + CAPTION_GAP_PT + titlesPt(run) + 2 * PAD_PT + 5 * CELL_STYLE.leadPt;

/** Caption and titles where the table begins. */
export function setHead(run: Run): void {
  const { sheet, table, element } = run;
  if (table.caption !== '') {
    const lines = sheet.wrapping.linesOf(table.caption, STYLES.strong, sheet.width);
    sheet.tagged(element, 'Caption', {}, () => sheet.lines(lines, STYLES.strong, sheet.left, sheet.y));
    sheet.y += lines.length * STYLES.strong.leadPt + CAPTION_GAP_PT;
  }
  const row = sheet.pdf.struct('TR');
  element.add(row);
  for (const [index, { title }] of table.columns.entries()) {
    const isBeside = run.bands[0]!.includes(index);
    sheet.tagged(row, 'TH', { scope: 'Column', ...(isBeside ? {} : { alt: title }) }, () => drawTitle(run, index));
  }
  row.end();
  underTitles(run);
}

/** A column below has no place for a title: its text speaks for itself. */
function drawTitle(run: Run, index: number): void {
  if (run.bands[0]!.includes(index))
    drawLines(run.sheet, run.slots[index]!, titleLines(run, index), TITLE_STYLE, 'quiet');
}

function underTitles(run: Run): void {
  const { sheet } = run;
  sheet.y += titlesPt(run) + PAD_PT;
  drawRule(sheet, 0.8, INK_COLOURS.line);
  sheet.y += PAD_PT;
}

/** Goes on over the page, and says again whose rows these are; only sight needs that, so it is no content. */
export function turnPage(run: Run, groupTitle: string): void {
  const { sheet, table } = run;
  sheet.newPage();
  if (table.caption !== '') sayAgain(run, table.caption, STYLES.strong, CAPTION_GAP_PT);
  sheet.artifact(() => {
    for (const index of run.bands[0]!) drawTitle(run, index);
  });
  underTitles(run);
  if (groupTitle === '') return;
  sheet.y += PAD_PT;
  sayAgain(run, groupTitle, STYLES.tableStrong, PAD_PT);
}

function sayAgain({ sheet, language }: Run, text: string, style: Style, gapPt: number): void {
  const continued = ` (${say(language, 'page.continued')})`;
  const room = sheet.width - sheet.wrapping.widthOf(continued, style);
  const [first = '', ...more] = sheet.wrapping.linesOf(text, style, room);
  const line = `${first}${more.length === 0 ? '' : ' …'}${continued}`;
  sheet.artifact(() => sheet.line(line, style, sheet.left, sheet.y));
  sheet.y += style.leadPt + gapPt;
}
