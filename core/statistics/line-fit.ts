/** A straight line through points, with how well it is known. */
export interface LineFit {
  readonly count: number;
  readonly slope: number;
  readonly intercept: number;
  /** Standard errors; undefined for two points, which leave nothing to tell it from. */
  readonly slopeError: number | undefined;
  readonly interceptError: number | undefined;
  /** Scatter of the points about the line, n − 2. */
  readonly residualDeviation: number | undefined;
  readonly correlation: number;
  readonly meanX: number;
  /** Σ(x − x̄)². */
  readonly squaresX: number;
}

/**
 * Least-squares line y = a + b·x through two or more points that do not all stand at one x. About the means, so that
 * figures close to each other lose no digits.
 *
 * @source JCGM 100:2008, H.3; NIST/SEMATECH e-Handbook of Statistical Methods, 4.1.4.1
 */
export function lineFit(points: readonly { readonly x: number; readonly y: number }[]): LineFit {
  const count = points.length;
  const meanX = mean(points.map(({ x }) => x));
  const meanY = mean(points.map(({ y }) => y));
  let [squaresX, squaresY, products] = [0, 0, 0];
  for (const { x, y } of points) {
    squaresX += (x - meanX) ** 2;
    squaresY += (y - meanY) ** 2;
    products += (x - meanX) * (y - meanY);
  }
  const slope = products / squaresX;
  const intercept = meanY - slope * meanX;
  const left = points.reduce((sum, { x, y }) => sum + (y - meanY - slope * (x - meanX)) ** 2, 0);
  const residualDeviation = count > 2 ? Math.sqrt(left / (count - 2)) : undefined;
  const error = (share: number) => (residualDeviation === undefined ? undefined : residualDeviation * Math.sqrt(share));
  return {
    count,
    slope,
    intercept,
    slopeError: error(1 / squaresX),
    interceptError: error(1 / count + meanX ** 2 / squaresX),
    residualDeviation,
    correlation: products / Math.sqrt(squaresX * squaresY),
    meanX,
    squaresX,
  };
}

/** Of the line itself at x; undefined for two points. */
export const lineError = ({ residualDeviation, count, meanX, squaresX }: LineFit, x: number): number | undefined =>
  residualDeviation === undefined ? undefined : residualDeviation * Math.sqrt(1 / count + (x - meanX) ** 2 / squaresX);

/** Of the next point at x, which scatters about the line as those before did; undefined for two points. */
export const nextError = (fit: LineFit, x: number): number | undefined =>
  fit.residualDeviation === undefined ? undefined : Math.hypot(fit.residualDeviation, lineError(fit, x) ?? 0);

function mean(values: readonly number[]): number {
  const first = values.reduce((sum, value) => sum + value, 0) / values.length;
  // a second pass takes the rounding of the first sum back out
  return first + values.reduce((sum, value) => sum + (value - first), 0) / values.length;
}
