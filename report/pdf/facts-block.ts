import type { Fact } from '@clampwright/core/record';
import type { Sheet, StructureElement } from './sheet.ts';
import { STYLES, type Style } from './type.ts';

const LABEL_SHARE = 0.27;
const GUTTER_PT = 10;

/** Labels to the left, values to the right; a long value goes on over the page. */
export function setFacts(sheet: Sheet, facts: readonly Fact[]): void {
  const list = sheet.pdf.struct('L');
  sheet.root.add(list);
  for (const fact of facts) setFact(sheet, list, fact);
  list.end();
  sheet.y += 6;
}

function setFact(sheet: Sheet, list: StructureElement, fact: Fact): void {
  const labelWidth = sheet.width * LABEL_SHARE - GUTTER_PT;
  const valueLeft = sheet.left + sheet.width * LABEL_SHARE;
  const label = sheet.wrapping.linesOf(fact.label, STYLES.body, labelWidth);
  let value = sheet.wrapping.linesOf(fact.value, STYLES.body, sheet.width * (1 - LABEL_SHARE));
  const lead = STYLES.body.leadPt;
  sheet.need(Math.max(label.length, Math.min(value.length, 4)) * lead);
  const item = sheet.pdf.struct('LI');
  list.add(item);
  const labelBottom = sheet.y + label.length * lead;
  sheet.tagged(item, 'Lbl', {}, () => sheet.lines(label, STYLES.body, sheet.left, sheet.y, 'quiet'));
  const body = sheet.pdf.struct('LBody');
  item.add(body);
  for (let isFirst = true; value.length > 0; isFirst = false) {
    if (!isFirst) sheet.newPage();
    const here = value.slice(0, Math.max(1, Math.floor((sheet.bottom - sheet.y) / lead)));
    value = value.slice(here.length);
    sheet.content(body, 'LBody', () => sheet.lines(here, STYLES.body, valueLeft, sheet.y));
    sheet.y = Math.max(sheet.y + here.length * lead, isFirst ? labelBottom : 0);
  }
  body.end();
  item.end();
  sheet.y += 2;
}

const FIGURES_PER_LINE = 4;

/** A few figures set large, each with its label below. */
export function setFigures(sheet: Sheet, facts: readonly Fact[]): void {
  for (let start = 0; start < facts.length; start += FIGURES_PER_LINE) {
    setFigureLine(sheet, facts.slice(start, start + FIGURES_PER_LINE));
  }
}

function setFigureLine(sheet: Sheet, facts: readonly Fact[]): void {
  const columnPt = sheet.width / FIGURES_PER_LINE;
  const labels = facts.map(({ label }) => sheet.wrapping.linesOf(label, STYLES.label, columnPt - GUTTER_PT));
  const labelsPt = Math.max(...labels.map((lines) => lines.length)) * STYLES.label.leadPt;
  sheet.need(STYLES.figure.leadPt + labelsPt);
  const list = sheet.pdf.struct('L');
  sheet.root.add(list);
  for (const [index, { value }] of facts.entries()) {
    const x = sheet.left + index * columnPt;
    const item = sheet.pdf.struct('LI');
    list.add(item);
    const style = fitting(sheet, value, columnPt - GUTTER_PT);
    const figureY = sheet.y + STYLES.figure.leadPt - style.leadPt;
    sheet.tagged(item, 'LBody', {}, () => sheet.line(value, style, x, figureY));
    const labelY = sheet.y + STYLES.figure.leadPt;
    sheet.tagged(item, 'Lbl', {}, () => sheet.lines(labels[index]!, STYLES.label, x, labelY, 'quiet'));
    item.end();
  }
  list.end();
  sheet.y += STYLES.figure.leadPt + labelsPt + 12;
}

/** The style of figures, or as much smaller as the figure is too wide. */
function fitting(sheet: Sheet, value: string, widthPt: number): Style {
  const { face, sizePt, leadPt } = STYLES.figure;
  const share = Math.min(1, widthPt / sheet.wrapping.widthOf(value, STYLES.figure));
  return { face, sizePt: sizePt * share, leadPt: leadPt * share };
}
