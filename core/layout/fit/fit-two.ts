/** A fit of two figures. */
export interface TwoFitted {
  readonly values: readonly [number, number];
  /** Standard uncertainties; undefined without a measurement to spare. */
  readonly uncertainties?: readonly [number, number];
  readonly correlation: number;
  /** Standard deviation of what is left over. */
  readonly residual: number;
  readonly fitted: Float64Array;
}

type Model = (a: number, b: number) => Float64Array | undefined;

const BEGINNINGS: readonly (readonly [number, number])[] = [-0.2, 0.05, 0.2, 0.4].flatMap((a) =>
  [-0.4, 0.05, 0.5].map((b) => [a, b] as const),
);
const STEP = 1e-6;
const MOST_STEPS = 200;
const SETTLED = 1e-12;
/** Below so much of both their lengths two columns say the same. */
const SINGULAR = 1e-10;

/**
 * Least squares over two figures that the model need not be linear in, from the best of a dozen beginnings.
 *
 * @param model what would be measured; undefined where there is no such thing
 * @returns undefined where the measurements do not decide both
 * @source Levenberg and Marquardt (from memory); uncertainty from the inverse of JᵀJ, JCGM 100:2008, H.3 in kind
 */
export function fitTwo(model: Model, measured: readonly number[]): TwoFitted | undefined {
  const costOf = (fitted: Float64Array | undefined): number =>
    fitted ? fitted.reduce((sum, one, i) => sum + (measured[i]! - one) ** 2, 0) : Number.POSITIVE_INFINITY;
  let [a, b] = BEGINNINGS.reduce((best, next) => (costOf(model(...next)) < costOf(model(...best)) ? next : best));
  let fitted = model(a, b);
  if (!fitted) return undefined;
  let damping = 1e-3;
  for (let step = 0; step < MOST_STEPS; step++) {
    const normal = normalOf(model, fitted, measured, a, b);
    if (!normal) return undefined;
    const [da, db] = solved(normal, damping);
    const next = model(a + da, b + db);
    if (next && costOf(next) <= costOf(fitted)) {
      const isSettled = Math.abs(da) + Math.abs(db) < SETTLED;
      [a, b, fitted, damping] = [a + da, b + db, next, damping / 10];
      if (isSettled) break;
    } else {
      damping *= 10;
      if (damping > 1e12) break;
    }
  }
  return toldOf(model, fitted, measured, [a, b]);
}

interface Normal {
  readonly aa: number;
  readonly ab: number;
  readonly bb: number;
  readonly ra: number;
  readonly rb: number;
}

/** JᵀJ and Jᵀr by differences on both sides. */
function normalOf(
  model: Model,
  fitted: Float64Array,
  measured: readonly number[],
  a: number,
  b: number,
): Normal | undefined {
  const byA = slope(model(a - STEP, b), model(a + STEP, b));
  const byB = slope(model(a, b - STEP), model(a, b + STEP));
  if (!byA || !byB) return undefined;
  let [aa, ab, bb, ra, rb] = [0, 0, 0, 0, 0];
  for (const [i, one] of measured.entries()) {
    const left = one - fitted[i]!;
    aa += byA[i]! * byA[i]!;
    ab += byA[i]! * byB[i]!;
    bb += byB[i]! * byB[i]!;
    ra += byA[i]! * left;
    rb += byB[i]! * left;
  }
  return { aa, ab, bb, ra, rb };
}

const slope = (below: Float64Array | undefined, above: Float64Array | undefined): Float64Array | undefined =>
  below && above && above.map((one, i) => (one - below[i]!) / (2 * STEP));

function solved({ aa, ab, bb, ra, rb }: Normal, damping: number): readonly [number, number] {
  const [p, q] = [aa * (1 + damping), bb * (1 + damping)];
  const determinant = p * q - ab * ab;
  return determinant > 0 ? [(q * ra - ab * rb) / determinant, (p * rb - ab * ra) / determinant] : [0, 0];
}

function toldOf(
  model: Model,
  fitted: Float64Array,
  measured: readonly number[],
  values: readonly [number, number],
): TwoFitted | undefined {
  const normal = normalOf(model, fitted, measured, ...values);
  if (!normal) return undefined;
  const { aa, ab, bb } = normal;
  const determinant = aa * bb - ab * ab;
  if (!(determinant > SINGULAR * aa * bb)) return undefined;
  const spare = measured.length - 2;
  const squares = fitted.reduce((sum, one, i) => sum + (measured[i]! - one) ** 2, 0);
  const variance = spare > 0 ? squares / spare : 0;
  const told = {
    values,
    correlation: -ab / Math.sqrt(aa * bb),
    residual: Math.sqrt(variance),
    fitted,
  };
  if (spare === 0) return told;
  return {
    ...told,
    uncertainties: [Math.sqrt((variance * bb) / determinant), Math.sqrt((variance * aa) / determinant)],
  };
}
