import { type Mark, type MarkOf, numbered, type Sign } from './plot.ts';
import { spread } from './spread.ts';

/** One scale of a plot: data to places on the paper. */
export interface Scale {
  readonly from: number;
  readonly to: number;
  readonly place: (value: number) => number;
}

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** What is drawn, in order; paths in SVG's letters, which PDF takes as well. */
export type Shape =
  | { readonly kind: 'line'; readonly path: string; readonly isDashed: boolean }
  | { readonly kind: 'band' | 'bars'; readonly path: string; readonly isHatched: boolean }
  /** Signs in one path, and in another the lines of their uncertainty; the latter is often empty. */
  | { readonly kind: 'points'; readonly path: string; readonly whiskers: string; readonly sign: Sign }
  | { readonly kind: 'window'; readonly path: string }
  | { readonly kind: 'limit'; readonly path: string; readonly number: number; readonly x: number; readonly y: number }
  | { readonly kind: 'point'; readonly number: number; readonly x: number; readonly y: number; readonly label: Spot };

/** Radius of a sign, as a share of the letters' height. */
const SIGN = 0.27;

export interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly letter: number;
}

/** Marks as they lie on the paper. */
export function shapesOf(marks: readonly Mark[], x: Scale, y: Scale, frame: Frame): readonly Shape[] {
  const numbers = new Map<Mark, number>(numbered(marks).map((mark, index) => [mark, index + 1]));
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
      case 'points':
        return pointsShape(mark, { x, y, frame });
      case 'bars':
        return { kind: 'bars', path: barsPath(mark, x, y), isHatched: mark.isHatched ?? false };
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
  mark: MarkOf<'limit'>,
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

function windowPath(mark: MarkOf<'window'>, x: Scale, y: Scale, frame: Frame): string {
  const [left, right] = mark.along === 'x' ? [x.place(mark.from), x.place(mark.to)] : [frame.left, frame.right];
  const [top, bottom] = mark.along === 'y' ? [y.place(mark.to), y.place(mark.from)] : [frame.top, frame.bottom];
  return `${pathOf([
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ])}Z`;
}

function bandPath(points: MarkOf<'band'>['points'], x: Scale, y: Scale): string {
  const there = points.map((point) => [x.place(point.x), y.place(point.high)] as const);
  const back = points.toReversed().map((point) => [x.place(point.x), y.place(point.low)] as const);
  return there.length === 0 ? '' : `${pathOf([...there, ...back])}Z`;
}

function barsPath({ points, breadth }: MarkOf<'bars'>, x: Scale, y: Scale): string {
  const base = y.place(0);
  return points
    .map((point) => {
      const [left, right] = [x.place(point.x - breadth / 2), x.place(point.x + breadth / 2)];
      const top = y.place(point.y);
      return `${pathOf([
        [left, base],
        [left, top],
        [right, top],
        [right, base],
      ])}Z`;
    })
    .join('');
}

function pointsShape({ points, sign }: MarkOf<'points'>, { x, y, frame }: Place): Shape {
  const radius = SIGN * frame.letter;
  const path = points.map((point) => signPath(sign, x.place(point.x), y.place(point.y), radius)).join('');
  const whiskers = points.map(({ low, high, ...point }) =>
    low === undefined && high === undefined
      ? ''
      : whiskerPath(x.place(point.x), y.place(low ?? point.y), y.place(high ?? point.y), radius),
  );
  return { kind: 'points', path, whiskers: whiskers.join(''), sign };
}

function signPath(sign: Sign, left: number, top: number, radius: number): string {
  if (sign === 'cross') {
    return [
      [left - radius, top - radius, left + radius, top + radius] as const,
      [left - radius, top + radius, left + radius, top - radius] as const,
    ]
      .map(([fromX, fromY, toX, toY]) => line(fromX, fromY, toX, toY))
      .join('');
  }
  const half = (toX: number) => `A${figure(radius)} ${figure(radius)} 0 0 1 ${figure(toX)} ${figure(top)}`;
  return `M${figure(left - radius)} ${figure(top)}${half(left + radius)}${half(left - radius)}Z`;
}

const whiskerPath = (at: number, low: number, high: number, half: number): string =>
  line(at, low, at, high) + line(at - half, low, at + half, low) + line(at - half, high, at + half, high);

const line = (fromX: number, fromY: number, toX: number, toY: number): string =>
  pathOf([
    [fromX, fromY],
    [toX, toY],
  ]);

/** Hundredths of a point are finer than any printer. */
const figure = (value: number): string => String(Math.round(value * 100) / 100);

const pathOf = (places: readonly (readonly [number, number])[]): string =>
  places.map(([left, top], index) => `${index === 0 ? 'M' : 'L'}${figure(left)} ${figure(top)}`).join('');
