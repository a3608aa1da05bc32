/** A quantity as the law of propagation needs it. */
export interface Sensitive {
  readonly standardUncertainty: number;
  /** Partial derivative of the result by the quantity, at the estimates. */
  readonly sensitivity: number;
}

export interface Propagated {
  readonly standardUncertainty: number;
  /** What each quantity has of the variance; with correlation a part of what it has together with others. Sum 1. */
  readonly shares: readonly number[];
}

/** Correlation coefficients of pairs; pairs that are not named are uncorrelated. */
export type Correlations = readonly (readonly [i: number, j: number, r: number])[];

/**
 * Combined standard uncertainty by the law of propagation, first order.
 *
 * @source JCGM 100:2008, 5.1.2 and 5.2.2: u² = Σ c_i²·u_i² + 2·Σ c_i·c_j·u_i·u_j·r_ij
 */
export function propagate(quantities: readonly Sensitive[], correlations: Correlations = []): Propagated {
  const parts = quantities.map(({ standardUncertainty, sensitivity }) => sensitivity * standardUncertainty);
  const variances = parts.map((part, index) => part ** 2 + part * together(index, parts, correlations));
  const variance = variances.reduce((sum, own) => sum + own, 0);
  return {
    standardUncertainty: Math.sqrt(Math.max(variance, 0)),
    shares: variances.map((own) => (variance > 0 ? own / variance : 0)),
  };
}

const together = (index: number, parts: readonly number[], correlations: Correlations): number =>
  correlations.reduce((sum, [i, j, r]) => {
    if (i === index) return sum + r * (parts[j] ?? 0);
    return j === index ? sum + r * (parts[i] ?? 0) : sum;
  }, 0);

/** A part of a combined uncertainty, in the unit of the result, with its own degrees of freedom (Infinity: none to count). */
export interface Component {
  readonly contribution: number;
  readonly degrees: number;
}

/**
 * How many degrees of freedom a combined uncertainty has in effect; not rounded down.
 *
 * @source JCGM 100:2008, G.4.1, formula (G.2b), Welch and Satterthwaite: ν = u⁴ / Σ(u_i⁴/ν_i)
 */
export function effectiveDegrees(components: readonly Component[]): number {
  const variance = components.reduce((sum, { contribution }) => sum + contribution ** 2, 0);
  return variance ** 2 / components.reduce((sum, { contribution, degrees }) => sum + contribution ** 4 / degrees, 0);
}
