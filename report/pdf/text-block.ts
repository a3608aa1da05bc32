import type { Ink } from '@clampwright/core/record';
import type { Sheet, StructureElement } from './sheet.ts';
import { STYLES, type Style } from './type.ts';

/** How a run of lines is set. */
export interface Setting {
  readonly style: Style;
  readonly ink?: Ink;
  /** From the left edge of the text, pt. */
  readonly indentPt?: number;
  readonly parent?: StructureElement;
  readonly tag?: string;
  /** Drawn beside each piece that stands on one page. */
  readonly beside?: (topPt: number, bottomPt: number, isFirst: boolean) => void;
}

/** Sets a text over as many pages as it takes, as one structure element. */
export function setText(sheet: Sheet, text: string, setting: Setting): void {
  const { style, ink = 'line', indentPt = 0, tag = 'P', beside } = setting;
  let rest = sheet.wrapping.linesOf(text, style, sheet.width - indentPt);
  const element = sheet.pdf.struct(tag);
  (setting.parent ?? sheet.root).add(element);
  for (let isFirst = true; rest.length > 0; isFirst = false) {
    sheet.need(style.leadPt);
    const here = rest.slice(0, Math.max(1, Math.floor((sheet.bottom - sheet.y) / style.leadPt)));
    rest = rest.slice(here.length);
    const top = sheet.y;
    sheet.content(element, tag, () => sheet.lines(here, style, sheet.left + indentPt, top, ink));
    sheet.y += here.length * style.leadPt;
    beside?.(top, sheet.y, isFirst);
  }
  element.end();
}

/**
 * @param companyPt room that the heading wants below itself, so that it never stands alone at the foot of a page
 */
export function setHeading(sheet: Sheet, level: 1 | 2, text: string, companyPt: number): void {
  const style = level === 1 ? STYLES.heading1 : STYLES.heading2;
  sheet.space(level === 1 ? 22 : 12);
  sheet.need(style.leadPt + companyPt);
  setText(sheet, text, { style, tag: level === 1 ? 'H2' : 'H3' });
  sheet.y += level === 1 ? 6 : 3;
}

export function setParagraph(sheet: Sheet, text: string): void {
  setText(sheet, text, { style: STYLES.body });
  sheet.y += 6;
}
