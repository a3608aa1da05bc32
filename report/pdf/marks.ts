import { verdictMark } from '@clampwright/core/layout';
import type { Mark } from '@clampwright/core/record';
import { INK_COLOURS } from '../palette.ts';
import type { Sheet } from './sheet.ts';

/** The shape that stands for a verdict, its upper left corner at a point. */
export function drawMark(
  sheet: Sheet,
  verdict: Mark['verdict'],
  xPt: number,
  yPt: number,
  sizePt: number,
  isQuiet = false,
): void {
  const { pdf } = sheet;
  const colour = INK_COLOURS[isQuiet || verdict === 'none' ? 'quiet' : verdict];
  pdf.save().translate(xPt + sizePt / 2, yPt + sizePt / 2);
  const path = pdf.path(verdictMark(verdict, sizePt));
  if (verdict === 'none') path.lineWidth(0.8).stroke(colour);
  else path.fill(colour);
  pdf.restore();
}
