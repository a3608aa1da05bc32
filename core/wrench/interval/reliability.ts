import {
  type CensoredFit,
  censoredFit,
  fitThrough,
  type Observation,
  shareLeft,
  timeOf,
} from '../../statistics/censored-fit.ts';
import { chiSquare } from '../../statistics/distributions/gamma.ts';

export const RELIABILITY_MODELS = ['exponential', 'weibull'] as const;
export type ReliabilityModelName = (typeof RELIABILITY_MODELS)[number];

/** A fit with the interval that it gives, in the unit of its clock. */
export interface Reliability extends CensoredFit {
  readonly model: ReliabilityModelName;
  readonly aic: number;
  /** When the wanted share is left. */
  readonly interval: number;
  /** One-sided confidence limit below it. */
  readonly intervalLower: number;
  /** And above; left out where the likelihood allows any length. */
  readonly intervalUpper?: number;
}

/**
 * Interval after which a wanted share is still inside its limits, with confidence limits from the profile likelihood:
 * those intervals that the data speak against no more than twice the difference in log-likelihood allows.
 *
 * @param share      wanted, such as 0.95
 * @param confidence of each limit, one-sided, above 0.5
 * @returns undefined where the model has no best fit
 * @source ILAC-G24:2007 / OIML D 10, method 5 (other statistical approaches); W. Q. Meeker and L. A. Escobar, Statistical
 *         Methods for Reliability Data (1998), 8.3: profile likelihood
 */
export function reliabilityOf(
  observations: readonly Observation[],
  model: ReliabilityModelName,
  share: number,
  confidence: number,
): Reliability | undefined {
  const fit = censoredFit(observations, model);
  if (!fit) return undefined;
  const interval = timeOf(fit, share);
  const least = fit.logLikelihood - chiSquare(1).quantile(2 * confidence - 1) / 2;
  const isPossible = (time: number): boolean =>
    (fitThrough(observations, model, share, time)?.logLikelihood ?? -Infinity) >= least;
  const upper = edgeOf(isPossible, interval, 2);
  return {
    model,
    interval,
    intervalLower: edgeOf(isPossible, interval, 0.5) ?? 0,
    ...(upper === undefined ? {} : { intervalUpper: upper }),
    ...fit,
    aic: 2 * (model === 'weibull' ? 2 : 1) - 2 * fit.logLikelihood,
  };
}

const MOST_DOUBLINGS = 60;
const HALVINGS = 50;

/** Where what is possible ends, sought from inside over the logarithm of time. */
function edgeOf(isPossible: (time: number) => boolean, inside: number, factor: number): number | undefined {
  let near = inside;
  let far = inside * factor;
  for (let n = 0; isPossible(far); n++) {
    if (n > MOST_DOUBLINGS) return undefined;
    near = far;
    far *= factor;
  }
  for (let n = 0; n < HALVINGS; n++) {
    const middle = Math.sqrt(near * far);
    if (isPossible(middle)) near = middle;
    else far = middle;
  }
  return near;
}

/**
 * Interval that the data allow with a confidence when nothing was found out: the exponential model's limit.
 *
 * @param total time gone through without anything found out
 * @source W. Nelson, Applied Life Data Analysis (1982), 3.2: no failures, θ ≥ T/(−ln(1 − C))
 */
export const intervalWithoutFailure = (total: number, share: number, confidence: number): number =>
  (-Math.log(share) * total) / -Math.log(1 - confidence);

/** One point of the curve that is drawn. */
export interface SharePoint {
  readonly time: number;
  readonly share: number;
}

const CURVE_STEPS = 60;

/** Share left from the beginning to an end, ascending. */
export const curveOf = (fit: CensoredFit, until: number): readonly SharePoint[] =>
  Array.from({ length: CURVE_STEPS + 1 }, (_, step) => {
    const time = (until * step) / CURVE_STEPS;
    return { time, share: shareLeft(fit, time) };
  });
