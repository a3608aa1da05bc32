import type { KeyLine, PlotLayout, Shape } from '@clampwright/core/plot';
import { PLOT_COLOURS } from '../palette.ts';
import type { Sheet } from './sheet.ts';
import { STYLES } from './type.ts';

/** Width of what a key shows of a mark; its height is half of it. */
export const SWATCH_PT = 18;

const LINE_PT = 1.4;
const TAG_PT = 4.8;
const HATCH_PT = 3.2;

export function drawShape(sheet: Sheet, shape: Shape, { frame }: PlotLayout): void {
  const { pdf } = sheet;
  switch (shape.kind) {
    case 'line':
      return strokeLine(pdf, shape.path, shape.isDashed);
    case 'band':
    case 'bars':
      return shape.isHatched ? hatch(pdf, shape.path, frame) : fill(pdf, shape.path, shape.kind);
    case 'window':
      return fill(pdf, shape.path, 'window');
    case 'points':
      if (shape.whiskers !== '') pdf.path(shape.whiskers).lineWidth(0.7).stroke(PLOT_COLOURS.quiet);
      return drawSigns(pdf, shape.path, shape.sign);
    case 'limit':
      pdf.path(shape.path).lineWidth(0.9).stroke(PLOT_COLOURS.axis);
      return drawTag(sheet, shape.number, shape.x, shape.y, 1);
    case 'point':
      pdf.circle(shape.x, shape.y, 2.4).lineWidth(1.2).fillAndStroke('#ffffff', PLOT_COLOURS.axis);
      return drawTag(sheet, shape.number, shape.label.x, shape.label.y, TAG_PT);
  }
}

/** What a mark looks like, before its words in the key. */
export function drawSwatch(sheet: Sheet, { mark, number }: KeyLine, left: number, top: number): void {
  const { pdf } = sheet;
  const [height, middle] = [SWATCH_PT / 2, top + SWATCH_PT / 4];
  const box = `M${left} ${top}H${left + SWATCH_PT}V${top + height}H${left}Z`;
  switch (mark.kind) {
    case 'line':
      return strokeLine(pdf, `M${left} ${middle}H${left + SWATCH_PT}`, mark.isDashed ?? false);
    case 'band':
    case 'bars':
      return mark.isHatched
        ? hatch(pdf, box, { left, top, right: left + SWATCH_PT, bottom: top + height })
        : fill(pdf, box, mark.kind);
    case 'window':
      return fill(pdf, box, 'window');
    case 'points': {
      const [from, to] = [left + SWATCH_PT / 2 - 2.2, left + SWATCH_PT / 2 + 2.2];
      const ring = `M${from} ${middle}A2.2 2.2 0 0 1 ${to} ${middle}A2.2 2.2 0 0 1 ${from} ${middle}Z`;
      const [up, down] = [middle - 2.2, middle + 2.2];
      const cross = `M${from} ${up}L${to} ${down}M${from} ${down}L${to} ${up}`;
      return drawSigns(pdf, mark.sign === 'cross' ? cross : ring, mark.sign);
    }
    case 'limit':
    case 'point':
      return drawTag(sheet, number ?? 0, left + SWATCH_PT / 2, middle, mark.kind === 'point' ? TAG_PT : 1);
  }
}

function strokeLine(pdf: PDFKit.PDFDocument, path: string, isDashed: boolean): void {
  pdf
    .save()
    .path(path)
    .lineJoin('round')
    .lineWidth(isDashed ? 0.9 : LINE_PT);
  if (isDashed) pdf.dash(4, { space: 2.5 });
  pdf.stroke(isDashed ? PLOT_COLOURS.quiet : PLOT_COLOURS.line).restore();
}

function fill(pdf: PDFKit.PDFDocument, path: string, kind: 'band' | 'bars' | 'window'): void {
  const { ground, edge } = PLOT_COLOURS[kind];
  pdf.save().path(path).lineWidth(0.5);
  if (kind === 'window') pdf.dash(1, { space: 1.6 });
  pdf.fillAndStroke(ground, edge).restore();
}

interface Bounds {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Lines across, so that what must not be is seen without its colour. */
export function hatch(
  pdf: PDFKit.PDFDocument,
  path: string,
  { left, top, right, bottom }: Bounds,
  colour: string = PLOT_COLOURS.outside,
): void {
  const height = bottom - top;
  pdf.save().path(path).clip().lineWidth(1);
  for (let at = left - height; at < right; at += HATCH_PT) pdf.moveTo(at, bottom).lineTo(at + height, top);
  pdf.stroke(colour).restore();
  pdf.path(path).lineWidth(0.8).stroke(colour);
}

function drawSigns(pdf: PDFKit.PDFDocument, path: string, sign: 'dot' | 'ring' | 'cross'): void {
  const drawn = pdf.path(path).lineWidth(1);
  if (sign === 'cross') drawn.stroke(PLOT_COLOURS.axis);
  else drawn.fillAndStroke(sign === 'dot' ? PLOT_COLOURS.axis : '#ffffff', PLOT_COLOURS.axis);
}

function drawTag(sheet: Sheet, number: number, x: number, y: number, cornerPt: number): void {
  const { pdf } = sheet;
  const text = String(number);
  pdf.roundedRect(x - TAG_PT, y - TAG_PT, 2 * TAG_PT, 2 * TAG_PT, cornerPt).fill(PLOT_COLOURS.axis);
  const { face, sizePt } = STYLES.tableStrong;
  const half = sheet.wrapping.widthOf(text, STYLES.tableStrong) / 2;
  pdf.font(face).fontSize(sizePt).fillColor('#ffffff');
  pdf.text(text, x - half, y - sizePt * 0.71, { lineBreak: false });
}
