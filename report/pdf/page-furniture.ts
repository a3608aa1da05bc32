import { say } from '@clampwright/core/language';
import type { Document } from '@clampwright/core/record';
import { HAIRLINE, INK_COLOURS } from '../palette.ts';
import type { Sheet } from './sheet.ts';
import { STYLES, type Style } from './type.ts';

const HEAD_PT = 34;
const FOOT_PT = 36;
const STYLE = STYLES.label;
const BANNER_STYLE: Style = { face: 'bold', sizePt: 8, leadPt: 11 };

/** The title as it stands at the head of the first page. */
export function setTitle(sheet: Sheet, document: Document): void {
  const title = sheet.wrapping.linesOf(document.title, STYLES.title, sheet.width);
  sheet.tagged(sheet.root, 'H1', {}, () => sheet.lines(title, STYLES.title, sheet.left, sheet.y));
  sheet.y += title.length * STYLES.title.leadPt + 2;
  const subject = sheet.wrapping.linesOf(document.subject, STYLES.subject, sheet.width);
  sheet.tagged(sheet.root, 'P', {}, () => sheet.lines(subject, STYLES.subject, sheet.left, sheet.y, 'quiet'));
  sheet.y += subject.length * STYLES.subject.leadPt + 12;
}

/** Head and foot of every page; only now is it known how many pages there are. */
export function furnishPages(sheet: Sheet, document: Document): void {
  const { count } = sheet.pdf.bufferedPageRange();
  for (let index = 0; index < count; index++) {
    sheet.pdf.switchToPage(index);
    sheet.artifact(() => furnish(sheet, document, index + 1, count), 'Pagination');
  }
}

function furnish(sheet: Sheet, document: Document, page: number, pages: number): void {
  if (page > 1) shortened(sheet, `${document.title} · ${document.subject}`, HEAD_PT, sheet.width * 0.62);
  if (document.banner !== undefined) setBanner(sheet, document.banner);
  const footY = sheet.pdf.page.height - FOOT_PT;
  sheet.pdf.rect(sheet.left, footY - 6, sheet.width, 0.5).fill(HAIRLINE);
  shortened(sheet, document.reference, footY, sheet.width * 0.75);
  const number = say(document.language, 'page.of', { page, pages });
  sheet.line(number, STYLE, sheet.left + sheet.width - sheet.wrapping.widthOf(number, STYLE), footY, 'quiet');
}

/** The text on one line, cut short where it does not fit. */
function shortened(sheet: Sheet, text: string, y: number, widthPt: number): void {
  const lines = sheet.wrapping.linesOf(text.replaceAll('\n', ' '), STYLE, widthPt);
  sheet.line(lines.length > 1 ? `${lines[0]} …` : text, STYLE, sheet.left, y, 'quiet');
}

function setBanner(sheet: Sheet, banner: string): void {
  const width = sheet.wrapping.widthOf(banner, BANNER_STYLE);
  const right = sheet.left + sheet.width;
  sheet.pdf
    .rect(right - width - 12, HEAD_PT - 5, width + 12, 19)
    .lineWidth(1.2)
    .stroke(INK_COLOURS.line);
  sheet.line(banner, BANNER_STYLE, right - width - 6, HEAD_PT - 1);
}
