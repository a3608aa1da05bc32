import type { FigureShape } from './fields.ts';
import { unitInName } from './unit-in-name.ts';

export interface Slider {
  readonly from: number;
  readonly to: number;
  readonly step: number;
}

/** Where the figure lies in practice; what the calculation takes beyond that is typed. Common practice. */
const USUAL: readonly (readonly [RegExp, Slider])[] = [
  [/friction/i, { from: 0.04, to: 0.4, step: 0.005 }],
  [/^nutFactor$/, { from: 0.05, to: 0.5, step: 0.005 }],
];

/** Wider than this a finger cannot find a figure. */
const WIDEST = 10;
const STEPS = 100;

/** A slider for a plain number that is bounded at both ends; undefined for one that is better typed. */
export function sliderOf(name: string, { range }: FigureShape): Slider | undefined {
  if (!range || unitInName(name) !== undefined) return undefined;
  const usual = USUAL.find(([pattern]) => pattern.test(name))?.[1];
  if (usual) return usual;
  const [from, to] = range;
  const step = (to - from) / STEPS;
  // Nothing at all is as a rule refused, and never wanted.
  return to - from > WIDEST ? undefined : { from: from === 0 ? step : from, to, step };
}
