import type { Language } from '../quantity/language.ts';
import { showNumber } from '../quantity/show-number.ts';
import type { Mark, Plot, PlotAxis } from './plot.ts';
import { type Scale, type Shape, shapesOf } from './shapes.ts';
import { roundRange, ticks } from './ticks.ts';

export interface Tick {
  readonly at: number;
  readonly text: string;
}

export interface PlotLayout {
  readonly width: number;
  readonly height: number;
  readonly frame: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
  readonly xTicks: readonly Tick[];
  readonly yTicks: readonly Tick[];
  readonly shapes: readonly Shape[];
}

export interface Paper {
  readonly width: number;
  readonly height: number;
  /** Height of the letters, in the unit of the paper. */
  readonly letter: number;
}

/** Figures of tables and axes are about so wide, as a share of their height. */
const DIGIT = 0.66;
const AXIS_GAP = 0.7;

/**
 * Lays a plot out on paper of any size and unit.
 *
 * @returns places with the origin at the upper left corner, y downwards
 */
export function layOutPlot(plot: Plot, paper: Paper, language: Language): PlotLayout {
  const { width, height, letter } = paper;
  const [xFrom, xTo] = rangeOf(plot.x, plot.marks.flatMap(xOf), ticksAcross(paper));
  const [yFrom, yTo] = rangeOf(plot.y, plot.marks.flatMap(yOf), ticksDown(paper));
  const xWords = wordsOf(plot.x, [xFrom, xTo], ticksAcross(paper), language);
  const yWords = wordsOf(plot.y, [yFrom, yTo], ticksDown(paper), language);
  const widest = Math.max(1, ...yWords.map(({ text }) => text.length));
  const hasSideLimit = plot.marks.some((mark) => mark.kind === 'limit' && mark.along === 'y');
  const frame = {
    left: plot.y.isBare ? letter : (widest * DIGIT + AXIS_GAP) * letter,
    right: width - (hasSideLimit ? 2.2 : 1.2) * letter,
    top: 3.4 * letter,
    bottom: height - 2.9 * letter,
  };
  const x = scale([xFrom, xTo], [frame.left, frame.right]);
  const y = scale([yFrom, yTo], [frame.bottom, frame.top]);
  return {
    width,
    height,
    frame,
    xTicks: xWords.map(({ at, text }) => ({ at: x.place(at), text })),
    yTicks: yWords.map(({ at, text }) => ({ at: y.place(at), text })),
    shapes: shapesOf(plot.marks, x, y, { ...frame, letter }),
  };
}

/** What stands at the axis, at the figures of the axis. */
function wordsOf(axis: PlotAxis, [from, to]: readonly [number, number], count: number, language: Language) {
  if (axis.isBare) return [];
  if (axis.ticks) return axis.ticks.filter(({ at }) => at >= from && at <= to);
  return ticks(from, to, count).map((at) => ({ at, text: showNumber(at, language) }));
}

const ticksAcross = ({ width, letter }: Paper): number => Math.max(2, Math.round(width / (7 * letter)));
const ticksDown = ({ height, letter }: Paper): number => Math.max(2, Math.round(height / (4 * letter)));

function rangeOf(axis: PlotAxis, values: readonly number[], count: number): readonly [number, number] {
  const all = [...values, axis.from, axis.to].filter((value) => value !== undefined && Number.isFinite(value));
  const known = all.filter((value) => value !== undefined);
  if (known.length === 0) return [0, 1];
  const [from, to] = [Math.min(...known), Math.max(...known)];
  return axis.ticks && to > from ? [from, to] : roundRange(from, to, count);
}

function xOf(mark: Mark): readonly number[] {
  switch (mark.kind) {
    case 'line':
    case 'band':
    case 'points':
      return mark.points.map((point) => point.x);
    case 'bars':
      return mark.points.flatMap(({ x }) => [x - mark.breadth / 2, x + mark.breadth / 2]);
    case 'window':
      return mark.along === 'x' ? [mark.from, mark.to] : [];
    case 'limit':
      return mark.along === 'x' ? [mark.at] : [];
    case 'point':
      return [mark.at.x];
  }
}

function yOf(mark: Mark): readonly number[] {
  switch (mark.kind) {
    case 'line':
      return mark.points.map((point) => point.y);
    case 'bars':
      return [0, ...mark.points.map((point) => point.y)];
    case 'band':
      return mark.points.flatMap((point) => [point.low, point.high]);
    case 'points':
      return mark.points.flatMap(({ y, low, high }) => [y, low ?? y, high ?? y]);
    case 'window':
      return mark.along === 'y' ? [mark.from, mark.to] : [];
    case 'limit':
      return mark.along === 'y' ? [mark.at] : [];
    case 'point':
      return [mark.at.y];
  }
}

function scale([from, to]: readonly [number, number], [start, end]: readonly [number, number]): Scale {
  const perUnit = (end - start) / (to - from);
  return { from, to, place: (value) => start + (value - from) * perUnit };
}
