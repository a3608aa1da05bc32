/* A plot as data: what is shown, in its own units. Screen and paper draw the same one. */

export interface PlotPoint {
  readonly x: number;
  readonly y: number;
}

export interface PlotAxis {
  /** Quantity and unit, such as `Torque, N·m`. */
  readonly label: string;
  /** At least what the axis spans; it is widened to round figures and to what the marks need. */
  readonly from?: number;
  readonly to?: number;
  /** An axis without figures, such as that of a density, whose height means nothing by itself. */
  readonly isBare?: boolean;
  /** Words in place of figures, such as dates or positions; the axis is then not widened to round figures. */
  readonly ticks?: readonly { readonly at: number; readonly text: string }[];
}

interface Named {
  /** What it is, said in the key; marks of one name share a line there. */
  readonly name: string;
  /** What it reads, said after the name: `83 N·m, 42 kN`. */
  readonly reads?: string;
}

/** Told apart by shape, not by colour. */
export type Sign = 'dot' | 'ring' | 'cross';

export type Mark = Named &
  (
    | {
        readonly kind: 'line';
        readonly points: readonly PlotPoint[];
        /** Dashed where it is not followed, such as an elastic line past yield. */
        readonly isDashed?: boolean;
      }
    /** Between two lines over the same x. */
    | {
        readonly kind: 'band';
        readonly points: readonly { readonly x: number; readonly low: number; readonly high: number }[];
        /** Hatched: what must not be, such as the part outside a window. */
        readonly isHatched?: boolean;
      }
    /** Measured places; `low` and `high` draw how far each is uncertain. */
    | {
        readonly kind: 'points';
        readonly points: readonly (PlotPoint & { readonly low?: number; readonly high?: number })[];
        readonly sign: Sign;
      }
    /** Bars that stand on nought, such as the force of each bolt. */
    | {
        readonly kind: 'bars';
        readonly points: readonly PlotPoint[];
        /** Of each bar, in the unit of x. */
        readonly breadth: number;
        /** Hatched: what must not be. */
        readonly isHatched?: boolean;
      }
    /** A window across the whole plot. */
    | { readonly kind: 'window'; readonly along: 'x' | 'y'; readonly from: number; readonly to: number }
    /** A limit across the whole plot, told by its number. */
    | { readonly kind: 'limit'; readonly along: 'x' | 'y'; readonly at: number }
    /** A place worth reading, told by its number. */
    | { readonly kind: 'point'; readonly at: PlotPoint }
  );

export type MarkOf<Kind extends Mark['kind']> = Extract<Mark, { readonly kind: Kind }>;

export interface Plot {
  readonly x: PlotAxis;
  readonly y: PlotAxis;
  readonly marks: readonly Mark[];
}

/** Marks that carry a number, in the order of the plot; the first is 1. */
export const numbered = (marks: readonly Mark[]): readonly MarkOf<'limit' | 'point'>[] =>
  marks.filter((mark) => mark.kind === 'limit' || mark.kind === 'point');

/** A line of the key. */
export interface KeyLine {
  readonly mark: Mark;
  /** Of a limit or a point, as it stands in the plot. */
  readonly number: number | undefined;
}

/** What the plot says in words: each name once, in the order of the plot. */
export function keyOf(marks: readonly Mark[]): readonly KeyLine[] {
  const numbers = new Map<Mark, number>(numbered(marks).map((mark, index) => [mark, index + 1]));
  return marks
    .filter((mark, index) => marks.findIndex(({ name }) => name === mark.name) === index)
    .map((mark) => ({ mark, number: numbers.get(mark) }));
}
