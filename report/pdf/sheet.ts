import type { Document, Ink, Paper } from '@clampwright/core/record';
import PdfKit from 'pdfkit';
import { INK_COLOURS } from '../palette.ts';
import type { Faces, Style } from './type.ts';
import { Wrapping } from './wrapping.ts';

export type StructureElement = PDFKit.PDFStructureElement;

const MM = 72 / 25.4;
const MARGIN = { side: 18 * MM, top: 24 * MM, bottom: 20 * MM };

/** ISO 216 A4 and ANSI/ASME Y14.1 A, in points. */
const PAPER_SIZES: Readonly<Record<Paper, [number, number]>> = { A4: [210 * MM, 297 * MM], Letter: [612, 792] };

/** The paper being written on: the PDF, how far down the page it is filled, and the tree of what is on it. */
export class Sheet {
  readonly pdf: PDFKit.PDFDocument;
  readonly root: StructureElement;
  readonly wrapping: Wrapping;
  readonly left = MARGIN.side;
  readonly top = MARGIN.top;
  readonly width: number;
  readonly bottom: number;
  y = MARGIN.top;

  constructor(document: Document, faces: Faces) {
    this.pdf = openPdf(document);
    for (const face of ['regular', 'semibold', 'bold'] as const) this.pdf.registerFont(face, Buffer.from(faces[face]));
    this.wrapping = new Wrapping(this.pdf, faces);
    this.root = this.pdf.struct('Document', { title: document.title, lang: document.language });
    this.pdf.addStructure(this.root);
    this.pdf.addPage();
    this.width = this.pdf.page.width - 2 * MARGIN.side;
    this.bottom = this.pdf.page.height - MARGIN.bottom;
  }

  get bodyHeight(): number {
    return this.bottom - this.top;
  }

  get isFresh(): boolean {
    return this.y === this.top;
  }

  newPage(): void {
    this.pdf.addPage();
    this.y = this.top;
  }

  /** Begins a new page unless there is room for so much. */
  need(heightPt: number): void {
    if (this.y + heightPt > this.bottom && !this.isFresh) this.newPage();
  }

  /** White space; none at the head of a page. */
  space(heightPt: number): void {
    if (!this.isFresh) this.y += heightPt;
  }

  /** Draws as the content of a structure element: what a screen reader reads out. */
  tagged(
    parent: StructureElement,
    type: string,
    options: PDFKit.Mixins.StructureElementOptions,
    draw: () => void,
  ): void {
    const element = this.pdf.struct(type, options);
    parent.add(element);
    this.content(element, type, draw);
    element.end();
  }

  /** Draws as more content of an element that is not ended. */
  content(element: StructureElement, type: string, draw: () => void): void {
    element.add(this.pdf.markStructureContent(type));
    draw();
    this.pdf.endMarkedContent();
  }

  /** Draws what means nothing: rules, page numbers. */
  artifact(draw: () => void, type: 'Layout' | 'Pagination' = 'Layout'): void {
    this.pdf.markContent('Artifact', { type });
    draw();
    this.pdf.endMarkedContent();
  }

  /** One line of text that is known to fit. */
  line(text: string, style: Style, xPt: number, yPt: number, ink: Ink = 'line'): void {
    this.pdf.font(style.face).fontSize(style.sizePt).fillColor(INK_COLOURS[ink]);
    this.pdf.text(text, xPt, yPt, { lineBreak: false });
  }

  lines(texts: readonly string[], style: Style, xPt: number, yPt: number, ink: Ink = 'line'): void {
    for (const [index, text] of texts.entries()) this.line(text, style, xPt, yPt + index * style.leadPt, ink);
  }
}

function openPdf(document: Document): PDFKit.PDFDocument {
  const dated = new Date(document.datedAt);
  return new PdfKit({
    size: PAPER_SIZES[document.paper],
    margin: 0,
    autoFirstPage: false,
    bufferPages: true,
    font: '',
    pdfVersion: '1.7',
    subset: 'PDF/A-2a',
    tagged: true,
    displayTitle: true,
    lang: document.language,
    info: {
      Title: `${document.title}: ${document.subject}`,
      Subject: document.reference,
      Creator: 'Clampwright',
      Producer: 'Clampwright',
      CreationDate: dated,
      ModDate: dated,
    },
  });
}
