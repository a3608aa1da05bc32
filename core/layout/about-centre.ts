import type { AcrossGap, Distance } from './farthest-first.ts';
import type { Place } from './layout.ts';

/** Distances of places among themselves and about their centre (the mean of all), by index. */
export interface AboutCentre {
  readonly distance: Distance;
  readonly acrossGap: AcrossGap;
  readonly fromCentre: (index: number) => number;
  /** Whether `b` is the point reflection of `a` through the centre. */
  readonly isReflection: (a: number, b: number) => boolean;
}

/** Figures are held to a billionth of the span, so that places equally far by design are equally far here. */
const GRAIN = 1e-9;

/** Places typed by hand lie across from each other within so much of the span. */
const REFLECTION_SHARE = 1e-3;

/** Places from the mean of all, mm. */
export function aboutMean(places: readonly Place[]): readonly (readonly [number, number])[] {
  const count = places.length;
  const xMm = places.reduce((sum, place) => sum + place.xMm, 0) / count;
  const yMm = places.reduce((sum, place) => sum + place.yMm, 0) / count;
  return places.map((place) => [place.xMm - xMm, place.yMm - yMm]);
}

export function aboutCentre(places: readonly Place[]): AboutCentre {
  const spots = aboutMean(places);
  const xs = spots.map(([xMm]) => xMm);
  const ys = spots.map(([, yMm]) => yMm);
  const grainMm = GRAIN * Math.max(1e-6, ...xs.map(Math.abs), ...ys.map(Math.abs));
  const length = (xMm: number, yMm: number) => Math.round(Math.hypot(xMm, yMm) / grainMm);
  const fromCentre = (index: number) => length(xs[index]!, ys[index]!);
  const fromReflection = (a: number, b: number) => length(xs[a]! + xs[b]!, ys[a]! + ys[b]!);
  return {
    distance: (a, b) => length(xs[a]! - xs[b]!, ys[a]! - ys[b]!),
    fromCentre,
    acrossGap: (a, b) => {
      const gap = fromReflection(a, b);
      return gap < fromCentre(a) ? gap : Number.POSITIVE_INFINITY;
    },
    isReflection: (a, b) => fromReflection(a, b) <= REFLECTION_SHARE / GRAIN,
  };
}
