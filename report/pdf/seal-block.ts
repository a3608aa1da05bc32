import type { Block } from '@clampwright/core/record';
import { qrPath } from '../barcode.ts';
import type { Sheet, StructureElement } from './sheet.ts';
import { STYLES } from './type.ts';

type SealBlock = Extract<Block, { kind: 'seal' }>;

const BARCODE_PT = 128;
const GAP_PT = 12;

/** The seal whole on one page: what was signed, in text on the left and as a barcode on the right. */
export function setSeal(sheet: Sheet, seal: SealBlock): void {
  const factsWidth = sheet.width - BARCODE_PT - GAP_PT;
  const facts = seal.facts.map(({ label, value }) => ({
    label,
    value: sheet.wrapping.linesOf(value, STYLES.table, factsWidth),
  }));
  const factsHeight = facts.reduce(
    (sum, { value }) => sum + STYLES.label.leadPt + value.length * STYLES.table.leadPt + 4,
    0,
  );
  const text = sheet.wrapping.linesOf(seal.text, STYLES.body, sheet.width);
  const height = Math.max(factsHeight, BARCODE_PT);
  sheet.need(height + GAP_PT + text.length * STYLES.body.leadPt);
  const top = sheet.y;
  const list = sheet.pdf.struct('L');
  sheet.root.add(list);
  for (const { label, value } of facts) setSealFact(sheet, list, label, value);
  list.end();
  drawBarcode(sheet, seal, sheet.left + sheet.width - BARCODE_PT, top);
  sheet.y = top + height + GAP_PT;
  sheet.tagged(sheet.root, 'P', {}, () => sheet.lines(text, STYLES.body, sheet.left, sheet.y));
  sheet.y += text.length * STYLES.body.leadPt;
}

function setSealFact(sheet: Sheet, list: StructureElement, label: string, value: readonly string[]): void {
  const item = sheet.pdf.struct('LI');
  list.add(item);
  sheet.tagged(item, 'Lbl', {}, () => sheet.line(label, STYLES.label, sheet.left, sheet.y, 'quiet'));
  sheet.y += STYLES.label.leadPt;
  sheet.tagged(item, 'LBody', {}, () => sheet.lines(value, STYLES.table, sheet.left, sheet.y));
  item.end();
  sheet.y += value.length * STYLES.table.leadPt + 4;
}

function drawBarcode(sheet: Sheet, { barcode }: SealBlock, x: number, y: number): void {
  const { d, sizeModules } = qrPath(barcode.content);
  const bbox: [number, number, number, number] = [x, y, x + BARCODE_PT, y + BARCODE_PT];
  sheet.tagged(sheet.root, 'Figure', { alt: barcode.alt, bbox }, () => {
    sheet.pdf
      .save()
      .translate(x, y)
      .scale(BARCODE_PT / sizeModules);
    sheet.pdf.path(d).fill('#000000');
    sheet.pdf.restore();
  });
}
