import type { Language } from '../quantity/language.ts';
import { showNumber } from '../quantity/show-number.ts';
import { type Mark, numbered, type Plot, type PlotAxis } from './plot.ts';
import { spread } from './spread.ts';
import { roundRange, ticks } from './ticks.ts';

/** One scale of a plot: data to places on the paper. */
export interface Scale {
  readonly from: number;
  readonly to: number;
  readonly place: (value: number) => number;
}

export interface Tick {
  readonly at: number;
  readonly text: string;
}

/** What is drawn, in order; paths in SVG's letters, which PDF takes as well. */
export type Shape =
  | { readonly kind: 'line'; readonly path: string; readonly isDashed: boolean }
  | { readonly kind: 'band'; readonly path: string; readonly isHatched: boolean }
  | { readonly kind: 'window'; readonly path: string }
  | { readonly kind: 'limit'; readonly path: string; readonly number: number; readonly x: number; readonly y: number }
  | { readonly kind: 'point'; readonly number: number; readonly x: number; readonly y: number; readonly label: Spot };

export interface Spot {
  readonly x: number;
  readonly y: number;
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
  const yFigures = plot.y.isBare ? [] : ticks(yFrom, yTo, ticksDown(paper));
  const widest = Math.max(1, ...yFigures.map((figure) => showNumber(figure, language).length));
  const hasSideLimit = plot.marks.some((mark) => mark.kind === 'limit' && mark.along === 'y');
  const frame = {
    left: plot.y.isBare ? letter : (widest * DIGIT + AXIS_GAP) * letter,
    right: width - (hasSideLimit ? 2.2 : 1.2) * letter,
    top: 3.4 * letter,
    bottom: height - 2.9 * letter,
  };
  const x = scale([xFrom, xTo], [frame.left, frame.right]);
  const y = scale([yFrom, yTo], [frame.bottom, frame.top]);
  const xFigures = plot.x.isBare ? [] : ticks(xFrom, xTo, ticksAcross(paper));
  return {
    width,
    height,
    frame,
    xTicks: xFigures.map((figure) => ({ at: x.place(figure), text: showNumber(figure, language) })),
    yTicks: yFigures.map((figure) => ({ at: y.place(figure), text: showNumber(figure, language) })),
    shapes: shapesOf(plot.marks, x, y, { ...frame, letter }),
  };
}

const ticksAcross = ({ width, letter }: Paper): number => Math.max(2, Math.round(width / (7 * letter)));
const ticksDown = ({ height, letter }: Paper): number => Math.max(2, Math.round(height / (4 * letter)));

function rangeOf(axis: PlotAxis, values: readonly number[], count: number): readonly [number, number] {
  const all = [...values, axis.from, axis.to].filter((value) => value !== undefined && Number.isFinite(value));
  const known = all.filter((value) => value !== undefined);
  if (known.length === 0) return [0, 1];
  return roundRange(Math.min(...known), Math.max(...known), count);
}

function xOf(mark: Mark): readonly number[] {
  switch (mark.kind) {
    case 'line':
    case 'band':
      return mark.points.map((point) => point.x);
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
    case 'band':
      return mark.points.flatMap((point) => [point.low, point.high]);
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

interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly letter: number;
}

function shapesOf(marks: readonly Mark[], x: Scale, y: Scale, frame: Frame): readonly Shape[] {
  const numbers = new Map(numbered(marks).map((mark, index) => [mark, index + 1] as const));
  const tops = labelPlaces(marks, 'x', x, frame);
  const sides = labelPlaces(marks, 'y', y, frame);
  return marks.map((mark): Shape => {
    const number = mark.kind === 'limit' || mark.kind === 'point' ? (numbers.get(mark) ?? 0) : 0;
    switch (mark.kind) {
      case 'line':
        return {
          kind: 'line',
          path: pathOf(mark.points.map((point) => [x.place(point.x), y.place(point.y)])),
          isDashed: mark.isDashed ?? false,
        };
      case 'band':
        return { kind: 'band', path: bandPath(mark.points, x, y), isHatched: mark.isHatched ?? false };
      case 'window':
        return { kind: 'window', path: windowPath(mark, x, y, frame) };
      case 'limit':
        return limitShape(mark, number, { x, y, frame, label: tops.get(mark) ?? sides.get(mark) ?? 0 });
      case 'point':
        return pointShape(mark.at, number, { x, y, frame });
    }
  });
}

/** Numbers of limits stand outside of the frame, apart from each other. */
function labelPlaces(
  marks: readonly Mark[],
  along: 'x' | 'y',
  { place }: Scale,
  frame: Frame,
): ReadonlyMap<Mark, number> {
  const limits = marks.filter((mark) => mark.kind === 'limit' && mark.along === along);
  const wanted = limits.map((mark) => place(mark.kind === 'limit' ? mark.at : 0));
  const [from, to] = along === 'x' ? [frame.left, frame.right] : [frame.top, frame.bottom];
  const places = spread(wanted, 1.7 * frame.letter, from, to);
  return new Map(limits.map((mark, index) => [mark, places[index] ?? 0] as const));
}

interface Place {
  readonly x: Scale;
  readonly y: Scale;
  readonly frame: Frame;
}

/** A line across, with a bent end that leads to its number. */
function limitShape(
  mark: Extract<Mark, { kind: 'limit' }>,
  number: number,
  { x, y, frame, label }: Place & { readonly label: number },
): Shape {
  const half = frame.letter / 2;
  if (mark.along === 'x') {
    const at = x.place(mark.at);
    const path = pathOf([
      [at, frame.bottom],
      [at, frame.top],
      [label, frame.top - half],
    ]);
    return { kind: 'limit', path, number, x: label, y: frame.top - 1.3 * frame.letter };
  }
  const at = y.place(mark.at);
  const path = pathOf([
    [frame.left, at],
    [frame.right, at],
    [frame.right + half, label],
  ]);
  return { kind: 'limit', path, number, x: frame.right + 1.3 * frame.letter, y: label };
}

/** The number stands up and left of its point, where a rising curve is not; down and right where there is no room. */
function pointShape(at: { readonly x: number; readonly y: number }, number: number, { x, y, frame }: Place): Shape {
  const [left, top] = [x.place(at.x), y.place(at.y)];
  const away = 1.25 * frame.letter;
  const hasRoom = left - away - frame.letter > frame.left && top - away - frame.letter > frame.top - frame.letter;
  const side = hasRoom ? -1 : 1;
  return { kind: 'point', number, x: left, y: top, label: { x: left + side * away, y: top + side * away } };
}

function windowPath(mark: Extract<Mark, { kind: 'window' }>, x: Scale, y: Scale, frame: Frame): string {
  const [left, right] = mark.along === 'x' ? [x.place(mark.from), x.place(mark.to)] : [frame.left, frame.right];
  const [top, bottom] = mark.along === 'y' ? [y.place(mark.to), y.place(mark.from)] : [frame.top, frame.bottom];
  return `${pathOf([
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ])}Z`;
}

function bandPath(points: Extract<Mark, { kind: 'band' }>['points'], x: Scale, y: Scale): string {
  const there = points.map((point) => [x.place(point.x), y.place(point.high)] as const);
  const back = points.toReversed().map((point) => [x.place(point.x), y.place(point.low)] as const);
  return there.length === 0 ? '' : `${pathOf([...there, ...back])}Z`;
}

/** Hundredths of a point are finer than any printer. */
const figure = (value: number): string => String(Math.round(value * 100) / 100);

const pathOf = (places: readonly (readonly [number, number])[]): string =>
  places.map(([left, top], index) => `${index === 0 ? 'M' : 'L'}${figure(left)} ${figure(top)}`).join('');
