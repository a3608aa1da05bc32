import { sayMechanics } from '@clampwright/core/language';
import { type KeyLine, keyOf, layOutPlot, type Picture, type PlotLayout, pictureInWords } from '@clampwright/core/plot';
import type { Language } from '@clampwright/core/quantity';
import { type PlotBlock, plotCaption } from '@clampwright/core/record';
import { PLOT_COLOURS } from '../palette.ts';
import { setBars, setShares } from './part-bars.ts';
import { drawShape, drawSwatch, SWATCH_PT } from './plot-shapes.ts';
import type { Sheet } from './sheet.ts';
import { STYLES } from './type.ts';

const LETTER_PT = 8;
const WIDTH_SHARE = 0.8;
const HEIGHT_SHARE = 0.5;
/** Height of a line of figures above its base, as a share of the size of the type. */
const ASCENT = 1.069;

/** A plot in the middle of the page, its title above and its key below. */
export function setPlot(sheet: Sheet, block: PlotBlock, language: Language): void {
  const { picture } = block;
  const caption = sheet.wrapping.linesOf(plotCaption(block, language), STYLES.strong, sheet.width);
  sheet.space(8);
  sheet.need(caption.length * STYLES.strong.leadPt + roomOf(sheet, picture));
  sheet.tagged(sheet.root, 'P', {}, () => sheet.lines(caption, STYLES.strong, sheet.left, sheet.y));
  sheet.y += caption.length * STYLES.strong.leadPt + 3;
  switch (picture.kind) {
    case 'plot':
      setPlane(sheet, picture, language);
      break;
    case 'shares':
      setShares(sheet, picture, language);
      break;
    case 'bars':
      setBars(sheet, picture);
      break;
  }
  sheet.y += 8;
}

/** What cannot be parted: the plot with its key, or the first of the bars. */
const roomOf = (sheet: Sheet, picture: Picture): number =>
  picture.kind === 'plot'
    ? sheet.width * WIDTH_SHARE * HEIGHT_SHARE + (keyOf(picture.plot.marks).length + 1) * STYLES.table.leadPt
    : 90;

function setPlane(sheet: Sheet, picture: Extract<Picture, { kind: 'plot' }>, language: Language): void {
  const width = sheet.width * WIDTH_SHARE;
  const layout = layOutPlot(picture.plot, { width, height: width * HEIGHT_SHARE, letter: LETTER_PT }, language);
  const left = sheet.left + (sheet.width - width) / 2;
  const bbox: [number, number, number, number] = [left, sheet.y, left + width, sheet.y + layout.height];
  sheet.tagged(sheet.root, 'Figure', { alt: pictureInWords(picture, language), bbox }, () => {
    sheet.pdf.save().translate(left, sheet.y);
    drawAxes(sheet, layout, picture.plot.x.label, picture.plot.y.label);
    for (const shape of layout.shapes) drawShape(sheet, shape, layout);
    sheet.pdf.restore();
  });
  sheet.y += layout.height + 4;
  for (const line of keyOf(picture.plot.marks)) setKeyLine(sheet, line, left, language);
}

function drawAxes(sheet: Sheet, layout: PlotLayout, xLabel: string, yLabel: string): void {
  const { pdf } = sheet;
  const { left, right, top, bottom } = layout.frame;
  pdf.lineWidth(0.5);
  for (const { at } of layout.yTicks) pdf.moveTo(left, at).lineTo(right, at).stroke(PLOT_COLOURS.grid);
  for (const { at } of layout.xTicks) pdf.moveTo(at, top).lineTo(at, bottom).stroke(PLOT_COLOURS.grid);
  pdf.lineWidth(0.8).moveTo(left, top).lineTo(left, bottom).lineTo(right, bottom).stroke(PLOT_COLOURS.axis);
  const half = (STYLES.table.sizePt * ASCENT) / 2 + 1;
  for (const { at, text } of layout.yTicks) {
    sheet.line(text, STYLES.table, left - LETTER_PT / 2 - widthOf(sheet, text), at - half, 'quiet');
  }
  for (const { at, text } of layout.xTicks) {
    sheet.line(text, STYLES.table, at - widthOf(sheet, text) / 2, bottom + 2, 'quiet');
  }
  sheet.line(yLabel, STYLES.tableStrong, 0, 0);
  const labelLeft = right - sheet.wrapping.widthOf(xLabel, STYLES.tableStrong);
  sheet.line(xLabel, STYLES.tableStrong, labelLeft, layout.height - STYLES.table.leadPt);
}

const widthOf = (sheet: Sheet, text: string): number => sheet.wrapping.widthOf(text, STYLES.table);

function setKeyLine(sheet: Sheet, line: KeyLine, left: number, language: Language): void {
  const { name, reads } = line.mark;
  const indent = SWATCH_PT + 6;
  const said = reads === undefined ? name : sayMechanics(language, 'plot.reads', { name, value: reads });
  const lines = sheet.wrapping.linesOf(said, STYLES.table, sheet.left + sheet.width - left - indent);
  sheet.tagged(sheet.root, 'P', {}, () => {
    drawSwatch(sheet, line, left, sheet.y + 1);
    sheet.lines(lines, STYLES.table, left + indent, sheet.y);
  });
  sheet.y += lines.length * STYLES.table.leadPt + 1.5;
}
