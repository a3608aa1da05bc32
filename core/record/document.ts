import type { Picture } from '../plot/picture.ts';
import type { Language } from '../quantity/language.ts';
import type { Verdict } from '../verdict/verdict.ts';

/** A report as data: blocks without layout. `report/` renders it to PDF, HTML and CSV. */
export interface Document {
  readonly title: string;
  /** What it is about, one line. */
  readonly subject: string;
  readonly language: Language;
  readonly paper: Paper;
  /** Instant of the last fact in it (UTC, ISO 8601); never the time of printing, so that it renders the same again. */
  readonly datedAt: string;
  /** Repeated at the head of every page where a reader must not miss it. */
  readonly banner: string | undefined;
  /** Repeated at the foot of every page: what this page belongs to. */
  readonly reference: string;
  readonly blocks: readonly Block[];
}

export const PAPERS = ['A4', 'Letter'] as const;
export type Paper = (typeof PAPERS)[number];

export type Block =
  | { readonly kind: 'heading'; readonly level: 1 | 2; readonly text: string }
  | { readonly kind: 'paragraph'; readonly text: string }
  /** Labels and values; `big` for the few figures that are read first. */
  | { readonly kind: 'facts'; readonly size: 'big' | 'normal'; readonly facts: readonly Fact[] }
  | TableBlock
  | DrawingBlock
  | PlotBlock
  /** What must not be overlooked. */
  | { readonly kind: 'note'; readonly tone: Tone; readonly title: string; readonly lines: readonly string[] }
  | { readonly kind: 'seal'; readonly facts: readonly Fact[]; readonly barcode: Barcode; readonly text: string }
  | { readonly kind: 'pageBreak' };

export interface Fact {
  readonly label: string;
  readonly value: string;
}

export type Tone = 'caution' | 'exception' | 'doubt' | 'notice';

/** Content for a QR code (ISO/IEC 18004) and what it is, in words. */
export interface Barcode {
  readonly content: string;
  readonly alt: string;
}

export interface TableBlock {
  readonly kind: 'table';
  /** Which table of the document this is; tables of one name have the same columns. */
  readonly name: string;
  /** Said above it, and again where it goes on over the page. */
  readonly caption: string;
  readonly columns: readonly Column[];
  readonly groups: readonly RowGroup[];
}

export interface Column {
  readonly title: string;
  readonly align: 'left' | 'right';
  /** `below`: its text stands under the other cells of the row, over the whole width, and is often empty. */
  readonly place?: 'below';
}

/** Rows under a common line; an empty title has no line. */
export interface RowGroup {
  readonly title: string;
  readonly rows: readonly Row[];
}

export interface Row {
  /** As many as there are columns. */
  readonly cells: readonly Cell[];
  /** `quiet`: kept and shown, but no longer standing. */
  readonly voice: 'plain' | 'quiet';
}

/** A cell's text; with a verdict, its shape stands before the word. */
export interface Cell {
  readonly text: string;
  readonly verdict?: Verdict;
}

/** A drawing in its own millimetres, y downwards. */
export interface DrawingBlock {
  readonly kind: 'drawing';
  readonly caption: string;
  /** What the drawing shows, for somebody who does not see it. */
  readonly alt: string;
  readonly viewBox: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  readonly paths: readonly DrawingPath[];
  readonly labels: readonly DrawingLabel[];
  /** The marks that occur, with their words. */
  readonly key: readonly Mark[];
}

/** A shape as `core/layout` draws it for a verdict, and the word for it. */
export interface Mark {
  readonly verdict: Verdict | 'accepted' | 'none';
  readonly text: string;
}

/** What a line or a filled shape stands for; each renderer has its own colours. */
export type Ink = 'line' | 'quiet' | 'accepted' | Verdict;

export interface DrawingPath {
  /** SVG path data, about an origin of its own. */
  readonly d: string;
  /** Where that origin lies in the drawing. */
  readonly xMm: number;
  readonly yMm: number;
  readonly ink: Ink;
  readonly filled: boolean;
  readonly strokeMm: number;
}

export interface DrawingLabel {
  readonly text: string;
  /** Middle of the text. */
  readonly xMm: number;
  readonly yMm: number;
  readonly sizeMm: number;
  readonly ink: Ink;
}

/** A plot, laid out by each renderer for its own paper. */
export interface PlotBlock {
  readonly kind: 'plot';
  /** Which plot of the document this is; its figures are a table of this name. */
  readonly name: string;
  /** Before the title of the picture, such as the joint it is of; may be empty. */
  readonly about: string;
  readonly picture: Picture;
}
