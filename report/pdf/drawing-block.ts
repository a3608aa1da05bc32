import type { DrawingBlock, DrawingLabel, DrawingPath } from '@clampwright/core/record';
import { INK_COLOURS } from '../palette.ts';
import { drawMark } from './marks.ts';
import type { Sheet } from './sheet.ts';
import { STYLES } from './type.ts';

const TALLEST_PT = 300;
const WIDEST_SHARE = 0.8;
const KEY_MARK_PT = 8;
const KEY_GAP_PT = 18;

/** A drawing in the middle of the page, with its key and caption below. */
export function setDrawing(sheet: Sheet, drawing: DrawingBlock): void {
  const { viewBox } = drawing;
  const scale = Math.min((sheet.width * WIDEST_SHARE) / viewBox.width, TALLEST_PT / viewBox.height);
  const height = viewBox.height * scale;
  const caption = sheet.wrapping.linesOf(drawing.caption, STYLES.label, sheet.width);
  sheet.space(6);
  sheet.need(height + (caption.length + 4) * STYLES.label.leadPt);
  const left = sheet.left + (sheet.width - viewBox.width * scale) / 2;
  const box = [left, sheet.y, left + viewBox.width * scale, sheet.y + height] as const;
  sheet.tagged(sheet.root, 'Figure', { alt: drawing.alt, bbox: [...box] }, () => draw(sheet, drawing, left, scale));
  sheet.y += height + 8;
  setKey(sheet, drawing);
  sheet.tagged(sheet.root, 'P', {}, () => sheet.lines(caption, STYLES.label, sheet.left, sheet.y, 'quiet'));
  sheet.y += caption.length * STYLES.label.leadPt + 8;
}

function draw(sheet: Sheet, { viewBox, paths, labels }: DrawingBlock, left: number, scale: number): void {
  const { pdf } = sheet;
  pdf
    .save()
    .translate(left - viewBox.x * scale, sheet.y - viewBox.y * scale)
    .scale(scale);
  for (const path of paths) drawPath(pdf, path);
  for (const label of labels) drawLabel(sheet, label);
  pdf.restore();
}

function drawPath(pdf: PDFKit.PDFDocument, { d, xMm, yMm, ink, filled, strokeMm }: DrawingPath): void {
  pdf.save().translate(xMm, yMm);
  if (filled) pdf.path(d).fill(INK_COLOURS[ink]);
  else pdf.path(d).lineWidth(strokeMm).lineJoin('round').stroke(INK_COLOURS[ink]);
  pdf.restore();
}

/** Height of a capital letter over the size of the type (Noto Sans: 714 of 1,000 units). */
const CAPITAL = 0.714;
const ASCENT = 1.069;

function drawLabel(sheet: Sheet, { text, xMm, yMm, sizeMm, ink }: DrawingLabel): void {
  const style = { face: 'semibold', sizePt: sizeMm, leadPt: sizeMm } as const;
  const x = xMm - sheet.wrapping.widthOf(text, style) / 2;
  sheet.line(text, style, x, yMm - sizeMm * (ASCENT - CAPITAL / 2), ink);
}

function setKey(sheet: Sheet, { key }: DrawingBlock): void {
  const style = STYLES.table;
  const widths = key.map(({ text }) => KEY_MARK_PT + 5 + sheet.wrapping.widthOf(text, style));
  const total = widths.reduce((sum, width) => sum + width + KEY_GAP_PT, -KEY_GAP_PT);
  let x = sheet.left + Math.max(0, (sheet.width - total) / 2);
  if (key.length === 0) return;
  for (const [index, { verdict, text }] of key.entries()) {
    if (x + widths[index]! > sheet.left + sheet.width) {
      x = sheet.left;
      sheet.y += style.leadPt + 2;
    }
    sheet.tagged(sheet.root, 'P', {}, () => {
      drawMark(sheet, verdict, x, sheet.y + 1.5, KEY_MARK_PT);
      sheet.line(text, style, x + KEY_MARK_PT + 5, sheet.y);
    });
    x += widths[index]! + KEY_GAP_PT;
  }
  sheet.y += style.leadPt + 4;
}
