import { circle, halfDiscBelow, polygon } from './path.ts';

export const MARK_KINDS = ['within', 'under', 'over', 'doubtful', 'none', 'next', 'accepted'] as const;
/** A verdict, `none` yet, the `next` one in the work, or one `accepted` by exception. */
export type MarkKind = (typeof MARK_KINDS)[number];

/**
 * The shape that stands for a verdict, told without colour: within is a disc with a tick cut out, under a bowl not
 * full, over a peak, doubtful a hollow diamond; none an empty circle to be drawn as a line, next a target, accepted a
 * square with a bar cut out.
 *
 * @param size width and height, in whatever unit the drawing has
 * @returns SVG path data about the origin, y downwards, to be filled by either fill rule
 */
export function verdictMark(kind: MarkKind, size: number): string {
  const r = size / 2;
  switch (kind) {
    case 'within':
      return circle(0, 0, r) + scaled(TICK, r);
    case 'under':
      return halfDiscBelow(-r / 2, r);
    case 'over':
      return scaled(PEAK, r);
    case 'doubtful':
      return scaled(DIAMOND, r) + scaled(DIAMOND.toReversed(), 0.42 * r);
    case 'none':
      return circle(0, 0, 0.84 * r);
    case 'next':
      return circle(0, 0, r) + circle(0, 0, 0.66 * r, 'counter-clockwise') + circle(0, 0, 0.3 * r);
    case 'accepted':
      return scaled(SQUARE, r) + scaled(BAR, r);
  }
}

type Shape = readonly (readonly [x: number, y: number])[];

const scaled = (shape: Shape, factor: number): string => polygon(shape.map(([x, y]) => [x * factor, y * factor]));

// Within ± 1, clockwise; those cut out of another counter-clockwise.
const PEAK: Shape = [
  [0, -0.9],
  [1, 0.85],
  [-1, 0.85],
];
const DIAMOND: Shape = [
  [0, -1],
  [1, 0],
  [0, 1],
  [-1, 0],
];
const SQUARE: Shape = [
  [-0.85, -0.85],
  [0.85, -0.85],
  [0.85, 0.85],
  [-0.85, 0.85],
];
const BAR: Shape = [
  [-0.55, -0.15],
  [-0.55, 0.15],
  [0.55, 0.15],
  [0.55, -0.15],
];
const TICK: Shape = [
  [-0.58, 0.05],
  [-0.14, 0.49],
  [0.6, -0.27],
  [0.42, -0.45],
  [-0.14, 0.13],
  [-0.4, -0.13],
];
