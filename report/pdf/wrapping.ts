import { create } from 'fontkit';
import type { Face, Faces, Style } from './type.ts';

/** Lines of text that fit a width; remembers the widths of words, as tables repeat them by the thousand. */
export class Wrapping {
  readonly #pdf: PDFKit.PDFDocument;
  readonly #has: (codePoint: number) => boolean;
  readonly #widths: Readonly<Record<Face, Map<string, number>>> = {
    regular: new Map(),
    semibold: new Map(),
    bold: new Map(),
  };

  constructor(pdf: PDFKit.PDFDocument, faces: Faces) {
    this.#pdf = pdf;
    const font = create(Buffer.from(faces.regular));
    this.#has = (codePoint) => 'hasGlyphForCodePoint' in font && font.hasGlyphForCodePoint(codePoint);
  }

  /** Width of a text set in one line, pt. */
  widthOf(text: string, style: Style): number {
    const widths = this.#widths[style.face];
    let perPoint = widths.get(text);
    if (perPoint === undefined) {
      perPoint = this.#pdf.font(style.face).fontSize(100).widthOfString(text) / 100;
      widths.set(text, perPoint);
    }
    return perPoint * style.sizePt;
  }

  /**
   * The text in lines no wider than `widthPt`. A line that ends between words keeps its space, so that the words
   * stay apart for whoever does not see the lines. Words too long for a line are cut; a character that the face
   * does not have is written as its code point, so that nothing disappears.
   */
  linesOf(text: string, style: Style, widthPt: number): readonly string[] {
    const lines = printable(text, this.#has)
      .split('\n')
      .flatMap((paragraph) => this.#wrapped(paragraph, style, widthPt));
    return [...lines.slice(0, -1), lines.at(-1)!.trimEnd()];
  }

  /** Width of the longest word and of the longest line. */
  extentOf(text: string, style: Style): { readonly wordPt: number; readonly linePt: number } {
    const lines = printable(text, this.#has).split('\n');
    const widest = (parts: readonly string[]) => Math.max(0, ...parts.map((part) => this.widthOf(part, style)));
    return { wordPt: widest(lines.flatMap((line) => line.split(' '))), linePt: widest(lines) };
  }

  #wrapped(paragraph: string, style: Style, widthPt: number): readonly string[] {
    const lines: string[] = [];
    let line = '';
    for (const piece of paragraph.split(' ').flatMap((word) => this.#pieces(word, style, widthPt))) {
      if (line !== '' && this.#lineWidth(line + piece, style) > widthPt) {
        lines.push(line);
        line = '';
      }
      line += piece;
    }
    return [...lines, line];
  }

  /** Sum over the words: kerning across a space is far below the slack of a line. */
  #lineWidth(line: string, style: Style): number {
    const space = this.widthOf(' ', style);
    const words = line.trimEnd().split(' ');
    return words.reduce((sum, word) => sum + this.widthOf(word, style) + space, -space);
  }

  /** The word with its space, or what fits of it line by line; only the last piece has the space. */
  #pieces(word: string, style: Style, widthPt: number): readonly string[] {
    if (this.widthOf(word, style) <= widthPt) return [`${word} `];
    const pieces: string[] = [];
    let piece = '';
    for (const character of word) {
      if (piece !== '' && this.widthOf(piece + character, style) > widthPt) {
        pieces.push(piece);
        piece = '';
      }
      piece += character;
    }
    return [...pieces, `${piece} `];
  }
}

/** How signs of a formula are written by whoever lacks them. */
const WRITTEN_OUT: Readonly<Record<string, string>> = { '√': 'sqrt', '⁻': '^-' };

/** The text with what cannot be set written out, or as code points. */
export function printable(text: string, has: (codePoint: number) => boolean): string {
  let out = '';
  for (const character of text.replaceAll('\r\n', '\n').replaceAll('\t', ' ')) {
    const codePoint = character.codePointAt(0)!;
    out += character === '\n' || has(codePoint) ? character : (WRITTEN_OUT[character] ?? named(codePoint));
  }
  return out;
}

const named = (codePoint: number): string => `[U+${codePoint.toString(16).toUpperCase().padStart(4, '0')}]`;
