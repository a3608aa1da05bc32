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
}

export type Mark =
  | {
      readonly kind: 'line';
      readonly name: string;
      readonly points: readonly PlotPoint[];
      /** Dashed where it is not followed, such as an elastic line past yield. */
      readonly isDashed?: boolean;
    }
  /** Between two lines over the same x. */
  | {
      readonly kind: 'band';
      readonly name: string;
      readonly points: readonly { readonly x: number; readonly low: number; readonly high: number }[];
      /** Hatched: what must not be, such as the part outside a window. */
      readonly isHatched?: boolean;
    }
  /** A window across the whole plot. */
  | {
      readonly kind: 'window';
      readonly name: string;
      readonly along: 'x' | 'y';
      readonly from: number;
      readonly to: number;
    }
  /** A limit across the whole plot, told by its number. */
  | { readonly kind: 'limit'; readonly name: string; readonly along: 'x' | 'y'; readonly at: number }
  /** A place worth reading, told by its number. */
  | { readonly kind: 'point'; readonly name: string; readonly at: PlotPoint };

export interface Plot {
  readonly x: PlotAxis;
  readonly y: PlotAxis;
  readonly marks: readonly Mark[];
}

/** Marks that carry a number, in the order of the plot; the first is 1. */
export const numbered = (marks: readonly Mark[]): readonly Extract<Mark, { kind: 'limit' | 'point' }>[] =>
  marks.filter((mark) => mark.kind === 'limit' || mark.kind === 'point');
