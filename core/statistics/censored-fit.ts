/* Weibull and exponential models of when something fails, fitted to what is only known to lie between two times. */

/** It failed after `from` and by `to`; `to` Infinity: not yet. Both alike: known exactly. */
export interface Observation {
  readonly from: number;
  readonly to: number;
  /** How often it was seen; 1 when left out. */
  readonly count?: number | undefined;
}

/** S(t) = exp(−(t/scale)^shape). */
export interface ReliabilityModel {
  readonly shape: number;
  readonly scale: number;
}

export interface CensoredFit extends ReliabilityModel {
  readonly logLikelihood: number;
}

/**
 * Parameters of the hazard exp(shape·x − shift) over x = ln(t/unit). Over these the likelihood is concave, so that
 * Newton's steps find its one summit (J. Burridge, Biometrika 68 (1981) 1).
 */
interface Point {
  readonly shift: number;
  readonly shape: number;
}

interface Slope {
  readonly value: number;
  readonly gradient: readonly [number, number];
  readonly curvature: readonly [shiftShift: number, shiftShape: number, shapeShape: number];
}

const FLAT: Slope = { value: 0, gradient: [0, 0], curvature: [0, 0, 0] };

/**
 * Fits S(t) = exp(−(t/scale)^shape) by maximum likelihood.
 *
 * @param observations some failed, some not; times above 0
 * @param model        exponential has the shape 1
 * @returns undefined where the likelihood has no summit: nothing failed, or the times of both do not overlap
 * @source W. Nelson, Applied Life Data Analysis (1982), chapters 8 and 9
 */
export function censoredFit(
  observations: readonly Observation[],
  model: 'exponential' | 'weibull',
): CensoredFit | undefined {
  const unit = unitOf(observations);
  const start = { shift: 0, shape: 1 };
  const top = summit(observations, unit, start, model === 'weibull' ? BOTH : SHIFT_ALONE);
  return top && fitAt(observations, unit, top);
}

/**
 * The best fit under which a wanted share is left at a given time: one point of the profile likelihood.
 */
export function fitThrough(
  observations: readonly Observation[],
  model: 'exponential' | 'weibull',
  share: number,
  time: number,
): CensoredFit | undefined {
  const unit = unitOf(observations);
  const x = Math.log(time / unit);
  // shape·x − shift = ln(−ln share) keeps the share at the time.
  const start = { shift: x - Math.log(-Math.log(share)), shape: 1 };
  if (model === 'exponential') return fitAt(observations, unit, start);
  const top = summit(observations, unit, start, { along: [x, 1] });
  return top && fitAt(observations, unit, top);
}

/** Time at which a share is left. */
export const timeOf = ({ shape, scale }: ReliabilityModel, share: number): number =>
  scale * (-Math.log(share)) ** (1 / shape);

/** Share that is left at a time. */
export const shareLeft = ({ shape, scale }: ReliabilityModel, time: number): number =>
  Math.exp(-((time / scale) ** shape));

function unitOf(observations: readonly Observation[]): number {
  const times = observations.flatMap(({ from, to }) => [from, to]).filter((time) => time > 0 && time < Infinity);
  return Math.exp(times.reduce((sum, time) => sum + Math.log(time), 0) / times.length);
}

function fitAt(observations: readonly Observation[], unit: number, { shift, shape }: Point): CensoredFit {
  const { value } = likelihood(observations, unit, { shift, shape });
  return { shape, scale: unit * Math.exp(shift / shape), logLikelihood: value };
}

/** Where the summit is sought: in the plane, or along a line. */
type Ways = 'both' | { readonly along: readonly [number, number] };
const BOTH: Ways = 'both';
const SHIFT_ALONE: Ways = { along: [1, 0] };

const MOST_STEPS = 200;
/** A step this short lands, by its square, on the last digit; the likelihood itself no longer tells it from none. */
const CLOSE = 1e-6;
const SHORTEST = 1e-12;
/** Outside of these a Weibull curve is a step or nothing. */
const SHAPES = { from: 0.02, to: 60 } as const;
const FARTHEST_SHIFT = 500;

function summit(observations: readonly Observation[], unit: number, start: Point, ways: Ways): Point | undefined {
  let point = start;
  let here = likelihood(observations, unit, point);
  for (let step = 0; step < MOST_STEPS; step++) {
    const move = newtonStep(here, ways);
    const size = Math.hypot(...move);
    if (size < CLOSE) return isInside(point) ? moved(point, move, 1) : undefined;
    for (let factor = 1; ; factor /= 2) {
      if (factor < SHORTEST) return undefined;
      const next = moved(point, move, factor);
      const there = likelihood(observations, unit, next);
      if (next.shape > 0 && there.value >= here.value) {
        point = next;
        here = there;
        break;
      }
    }
    if (!isInside(point)) return undefined;
  }
  return undefined;
}

const moved = (
  { shift, shape }: Point,
  [alongShift, alongShape]: readonly [number, number],
  factor: number,
): Point => ({
  shift: shift + factor * alongShift,
  shape: shape + factor * alongShape,
});

const isInside = ({ shift, shape }: Point): boolean =>
  shape >= SHAPES.from && shape <= SHAPES.to && Math.abs(shift) <= FARTHEST_SHIFT;

function newtonStep({ gradient: [u, v], curvature: [a, b, c] }: Slope, ways: Ways): readonly [number, number] {
  if (ways !== 'both') {
    const [p, q] = ways.along;
    const size = -(p * u + q * v) / (p * p * a + 2 * p * q * b + q * q * c);
    return [p * size, q * size];
  }
  const determinant = a * c - b * b;
  if (!(determinant > 0)) return [u, v];
  return [-(c * u - b * v) / determinant, -(a * v - b * u) / determinant];
}

function likelihood(observations: readonly Observation[], unit: number, point: Point): Slope {
  return observations.reduce((sum, observation) => {
    const one = slopeOf(observation, unit, point);
    const n = observation.count ?? 1;
    return {
      value: sum.value + n * one.value,
      gradient: [sum.gradient[0] + n * one.gradient[0], sum.gradient[1] + n * one.gradient[1]],
      curvature: [
        sum.curvature[0] + n * one.curvature[0],
        sum.curvature[1] + n * one.curvature[1],
        sum.curvature[2] + n * one.curvature[2],
      ],
    };
  }, FLAT);
}

/** Hazard gone through by a time, with its slopes. */
function hazardAt(time: number, unit: number, { shift, shape }: Point): Slope {
  if (time === 0) return FLAT;
  const x = Math.log(time / unit);
  const hazard = Math.exp(shape * x - shift);
  return { value: hazard, gradient: [-hazard, x * hazard], curvature: [hazard, -x * hazard, x * x * hazard] };
}

function slopeOf({ from, to }: Observation, unit: number, point: Point): Slope {
  const before = hazardAt(from, unit, point);
  if (to === Infinity) return scaled(before, -1);
  if (from === to) return exactly(to, before, unit, point);
  const after = hazardAt(to, unit, point);
  const gap = after.value - before.value;
  const q = 1 / Math.expm1(gap);
  const change = (i: 0 | 1) => after.gradient[i] - before.gradient[i];
  const bend = (i: 0 | 1 | 2, rise: number) =>
    -before.curvature[i] + q * (after.curvature[i] - before.curvature[i]) - (q + q * q) * rise;
  return {
    value: -before.value + Math.log(-Math.expm1(-gap)),
    gradient: [-before.gradient[0] + q * change(0), -before.gradient[1] + q * change(1)],
    curvature: [bend(0, change(0) ** 2), bend(1, change(0) * change(1)), bend(2, change(1) ** 2)],
  };
}

/** Logarithm of the density: ln(shape/t) + ln hazard − hazard. */
function exactly(time: number, hazard: Slope, unit: number, { shape }: Point): Slope {
  const x = Math.log(time / unit);
  return {
    value: Math.log(shape / time) + Math.log(hazard.value) - hazard.value,
    gradient: [-1 - hazard.gradient[0], 1 / shape + x - hazard.gradient[1]],
    curvature: [-hazard.curvature[0], -hazard.curvature[1], -1 / shape ** 2 - hazard.curvature[2]],
  };
}

const scaled = ({ value, gradient: [u, v], curvature: [a, b, c] }: Slope, by: number): Slope => ({
  value: by * value,
  gradient: [by * u, by * v],
  curvature: [by * a, by * b, by * c],
});
