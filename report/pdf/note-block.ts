import type { Tone } from '@clampwright/core/record';
import { INK_COLOURS, TONE_INKS } from '../palette.ts';
import type { Sheet } from './sheet.ts';
import { setText } from './text-block.ts';
import { STYLES } from './type.ts';

const INDENT_PT = 14;
const BAR_PT = 3;
const DASH_PT = 9;

/** What must not be overlooked: a bar down the side, a sign, a title, and one line for each matter. */
export function setNote(sheet: Sheet, tone: Tone, title: string, lines: readonly string[]): void {
  const ink = TONE_INKS[tone];
  sheet.space(6);
  sheet.need(STYLES.strong.leadPt * 3);
  const section = sheet.pdf.struct('Sect');
  sheet.root.add(section);
  const beside = (top: number, bottom: number) =>
    sheet.artifact(() => sheet.pdf.rect(sheet.left, top, BAR_PT, bottom - top).fill(INK_COLOURS[ink]));
  const dashed = (top: number, bottom: number, isFirst: boolean) => {
    beside(top, bottom);
    if (isFirst) sheet.artifact(() => sheet.line('–', STYLES.body, sheet.left + INDENT_PT, top));
  };
  const setting = { indentPt: INDENT_PT, parent: section, beside };
  setText(sheet, title, { ...setting, style: STYLES.strong, ink });
  const list = lines.length > 1 ? { indentPt: INDENT_PT + DASH_PT, parent: section, beside: dashed } : setting;
  for (const line of lines) setText(sheet, line, { ...list, style: STYLES.body });
  section.end();
  sheet.y += 8;
}
