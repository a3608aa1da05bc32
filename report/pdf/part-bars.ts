import { sayMechanics } from '@clampwright/core/language';
import { type Part, type Picture, partBar, pictureInWords } from '@clampwright/core/plot';
import type { Language } from '@clampwright/core/quantity';
import { PART_LOOKS, PLOT_COLOURS } from '../palette.ts';
import { drawMark } from './marks.ts';
import { hatch } from './plot-shapes.ts';
import type { Sheet } from './sheet.ts';
import { STYLES } from './type.ts';

const BAR_PT = 16;
const THIN_PT = 6;
const SWATCH_PT = 9;
const WIDTH_SHARE = 0.8;

const rectangle = (left: number, top: number, width: number, height: number): string =>
  `M${left} ${top}H${left + width}V${top + height}H${left}Z`;

/** A whole and its parts on one bar; each part is named below. */
export function setShares(sheet: Sheet, picture: Extract<Picture, { kind: 'shares' }>, language: Language): void {
  const { parts } = picture;
  const width = sheet.width * WIDTH_SHARE;
  const left = sheet.left + (sheet.width - width) / 2;
  const laid = partBar(
    parts.map(({ share }) => share),
    width,
  );
  const bbox: [number, number, number, number] = [left, sheet.y, left + width, sheet.y + BAR_PT];
  sheet.tagged(sheet.root, 'Figure', { alt: pictureInWords(picture, language), bbox }, () => {
    for (const [index, part] of laid.entries()) drawPart(sheet, index, left + part.left, part.width, BAR_PT);
  });
  sheet.y += BAR_PT + 4;
  for (const [index, { name, text }] of parts.entries()) {
    sheet.tagged(sheet.root, 'P', {}, () => {
      drawPart(sheet, index, left, SWATCH_PT * 2, SWATCH_PT);
      sheet.line(
        sayMechanics(language, 'plot.reads', { name, value: text }),
        STYLES.table,
        left + 2 * SWATCH_PT + 6,
        sheet.y - 1,
      );
    });
    sheet.y += STYLES.table.leadPt + 1.5;
  }
}

function drawPart(sheet: Sheet, index: number, left: number, width: number, height: number): void {
  const { pdf, y } = sheet;
  const look = PART_LOOKS[index % PART_LOOKS.length]!;
  const path = rectangle(left, y, width, height);
  pdf.path(path).fill(look.ground);
  if (look.isHatched) hatch(pdf, path, { left, top: y, right: left + width, bottom: y + height }, PLOT_COLOURS.quiet);
  pdf.path(path).lineWidth(0.6).stroke(PLOT_COLOURS.axis);
}

/** Bars under each other, each below its words; the bars themselves say nothing more. */
export function setBars(sheet: Sheet, picture: Extract<Picture, { kind: 'bars' }>): void {
  const { parts, limit } = picture;
  for (const part of parts) setBar(sheet, part, picture);
  if (limit) {
    sheet.tagged(sheet.root, 'P', {}, () => {
      sheet.pdf.rect(sheet.left + SWATCH_PT / 2, sheet.y, 1.2, SWATCH_PT).fill(PLOT_COLOURS.axis);
      sheet.line(limit.text, STYLES.table, sheet.left + SWATCH_PT + 5, sheet.y - 1);
    });
    sheet.y += STYLES.table.leadPt + 2;
  }
}

function setBar(
  sheet: Sheet,
  { name, share, text, note = '', verdict }: Part,
  { whole = 1, limit }: Extract<Picture, { kind: 'bars' }>,
): void {
  const { pdf, left, width } = sheet;
  const style = STYLES.table;
  const notes = note === '' ? [] : sheet.wrapping.linesOf(note, STYLES.label, width);
  const textWidth = sheet.wrapping.widthOf(text, style);
  const names = sheet.wrapping.linesOf(name, STYLES.tableStrong, width - textWidth - 24);
  sheet.need(names.length * style.leadPt + THIN_PT + notes.length * STYLES.label.leadPt + 8);
  sheet.tagged(sheet.root, 'P', {}, () => {
    if (verdict) drawMark(sheet, verdict, left, sheet.y + 1.5, 8);
    sheet.lines(names, STYLES.tableStrong, left + (verdict ? 12 : 0), sheet.y);
    sheet.line(text, style, left + width - textWidth, sheet.y);
  });
  sheet.y += names.length * style.leadPt + 1;
  const along = (value: number) => Math.max(0, Math.min(1, value / whole)) * width;
  sheet.artifact(() => {
    pdf.rect(left, sheet.y, width, THIN_PT).fill(PLOT_COLOURS.well);
    const path = rectangle(left, sheet.y, along(share), THIN_PT);
    const bounds = { left, top: sheet.y, right: left + width, bottom: sheet.y + THIN_PT };
    if (verdict !== undefined && verdict !== 'within') hatch(pdf, path, bounds);
    else pdf.path(path).fill(PLOT_COLOURS.bars.ground);
    if (limit) pdf.rect(left + along(limit.at) - 0.6, sheet.y - 1.5, 1.2, THIN_PT + 3).fill(PLOT_COLOURS.axis);
  });
  sheet.y += THIN_PT + 2;
  if (notes.length > 0) {
    sheet.tagged(sheet.root, 'P', {}, () => sheet.lines(notes, STYLES.label, left, sheet.y, 'quiet'));
    sheet.y += notes.length * STYLES.label.leadPt;
  }
  sheet.y += 4;
}
