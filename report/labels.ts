import { say, sayDate } from '@clampwright/core/language';
import type { Language } from '@clampwright/core/quantity';
import type { Paper } from '@clampwright/core/record';
import { qrPath } from './barcode.ts';
import { collect } from './pdf/collect.ts';
import { Sheet } from './pdf/sheet.ts';
import { loadFaces, STYLES } from './pdf/type.ts';

/** What stands on the label of a wrench or of a reference standard. */
export interface Label {
  readonly id: string;
  readonly name: string;
  readonly serial: string;
  readonly calibratedOn?: string | undefined;
  readonly dueOn?: string | undefined;
}

const MM = 72 / 25.4;
/** Three columns of eight on A4, 70 mm by 36 mm with 4.5 mm at head and foot: the widest common sheet. */
const LABEL = { widthPt: 70 * MM, heightPt: 36 * MM, columns: 3, rows: 8, paddingPt: 4 * MM };
const CODE_PT = 26 * MM;

/** What the code says: the identity as a URN, in the letters that pack densest (RFC 9562, 4; case does not matter). */
export const labelCode = (id: string): string => `URN:UUID:${id.toUpperCase()}`;

/**
 * Labels for cutting or for sheets of labels, as PDF: name, serial number, when it was calibrated and when it is due,
 * and a QR code with its identity.
 *
 * @param datedAt instant that stands in the file; the same labels then give the same bytes
 */
export async function renderLabels(
  labels: readonly Label[],
  language: Language,
  datedAt: string,
  paper: Paper = 'A4',
): Promise<Uint8Array> {
  const document = {
    title: say(language, 'label.title'),
    subject: String(labels.length),
    language,
    paper,
    datedAt,
    banner: undefined,
    reference: 'Clampwright',
    blocks: [],
  };
  const sheet = new Sheet(document, await loadFaces());
  const bytes = collect(sheet.pdf);
  const perPage = LABEL.columns * LABEL.rows;
  for (const [index, label] of labels.entries()) {
    if (index > 0 && index % perPage === 0) sheet.newPage();
    drawLabel(sheet, label, placeOf(sheet, index % perPage), language);
  }
  sheet.root.end();
  sheet.pdf.end();
  return bytes;
}

interface Place {
  readonly x: number;
  readonly y: number;
}

function placeOf({ pdf }: Sheet, index: number): Place {
  const { width, height } = pdf.page;
  return {
    x: (width - LABEL.columns * LABEL.widthPt) / 2 + (index % LABEL.columns) * LABEL.widthPt,
    y: (height - LABEL.rows * LABEL.heightPt) / 2 + Math.floor(index / LABEL.columns) * LABEL.heightPt,
  };
}

function drawLabel(sheet: Sheet, label: Label, { x, y }: Place, language: Language): void {
  const { pdf, wrapping } = sheet;
  const [left, top] = [x + LABEL.paddingPt, y + LABEL.paddingPt];
  const { d, sizeModules } = qrPath(labelCode(label.id));
  const bbox: [number, number, number, number] = [left, top, left + CODE_PT, top + CODE_PT];
  sheet.tagged(sheet.root, 'Figure', { alt: labelCode(label.id), bbox }, () => {
    pdf
      .save()
      .translate(left, top)
      .scale(CODE_PT / sizeModules)
      .path(d)
      .fill('#000000')
      .restore();
  });
  const textLeft = left + CODE_PT + LABEL.paddingPt / 2;
  const width = x + LABEL.widthPt - LABEL.paddingPt / 2 - textLeft;
  const due = label.dueOn === undefined ? [] : [say(language, 'label.due', { on: sayDate(label.dueOn, language) })];
  const calibrated =
    label.calibratedOn === undefined
      ? []
      : [say(language, 'label.calibrated', { on: sayDate(label.calibratedOn, language) })];
  let at = top;
  const parts = [
    [[label.name], STYLES.tableStrong],
    [[label.serial, ...calibrated], STYLES.table],
    [due, STYLES.tableStrong],
  ] as const;
  for (const [texts, style] of parts) {
    for (const text of texts) {
      const lines = wrapping.linesOf(text, style, width).slice(0, 3);
      sheet.tagged(sheet.root, 'P', {}, () => sheet.lines(lines, style, textLeft, at));
      at += lines.length * style.leadPt + 1;
    }
  }
}
