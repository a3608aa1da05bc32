// Chebyshev coefficients over (z − 4.5)/(z + 4.5); made by validation/made/mills-ratio.py.
const COEFFICIENTS = [
  1.1622890943668538, -0.16244622078463714, -0.0204420878340828, 0.03153832633685455, -0.014396293456628503,
  0.004174355739111582, -0.0007986591609294063, 0.00007909827811208719, 0.000004839998445548529,
  -0.0000026875369141045505, 1.8469327970966856e-7, 6.065118777046067e-8, -1.0348101767189742e-8,
  -1.3782705896431845e-9, 4.1438506799746544e-10, 3.82129211147382e-11, -1.6081662082563117e-11,
  -1.4793610582723638e-12, 6.341710473685976e-13, 7.63822929407988e-14, -2.4847197145454417e-14,
  -4.4899732086149836e-15, 8.977340218480423e-16, 2.6763696237508087e-16, -2.4120044880240295e-17,
  -1.5162266967670302e-17,
] as const;

/**
 * Ratio of the normal upper tail to the density at z, for z from 0 to any size, to the last digits.
 *
 * @source M. M. Shepherd and J. G. Laframboise, Chebyshev approximation of (1 + 2x)·exp(x²)·erfc x, Math. Comp. 36 (1981)
 *         249: the same idea, with (1 + z) before the ratio and coefficients of our own
 */
export function millsRatio(z: number): number {
  const t = 2 * ((z - 4.5) / (z + 4.5));
  let last = 0;
  let before = 0;
  for (let k = COEFFICIENTS.length - 1; k > 0; k--) {
    const next = t * last - before + COEFFICIENTS[k]!;
    before = last;
    last = next;
  }
  return ((t / 2) * last - before + COEFFICIENTS[0]) / (1 + z);
}
