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
