import { millsRatio } from '../special/mills-ratio.ts';
import type { Continuous } from './continuous.ts';

const PER_ROOT_TWO_PI = 1 / Math.sqrt(2 * Math.PI);

/** z at which the normal distribution has 97.5 % below. */
export const Z_95 = 1.959963984540054;

const density = (z: number): number => PER_ROOT_TWO_PI * Math.exp(-0.5 * z * z);

/**
 * Share of the normal distribution of mean 0 and standard deviation 1 below z, to the last digits of either tail.
 *
 * @source NIST Handbook of Mathematical Functions (2010), 7.8.1: Mills' ratio
 */
export function shareBelow(z: number): number {
  if (z > 0) return 1 - shareAbove(z);
  return shareAbove(-z);
}

/** Share above z; see `shareBelow`. */
export function shareAbove(z: number): number {
  if (z < 0) return 1 - shareAbove(-z);
  if (z < 0.5) return 0.5 - centralShare(z);
  return z > 39 ? 0 : density(z) * millsRatio(z);
}

/** Share between 0 and z, for z below 1: NIST Handbook of Mathematical Functions (2010), 7.6.2. */
function centralShare(z: number): number {
  let term = z;
  let sum = z;
  for (let odd = 3; term > 1e-17 * sum; odd += 2) {
    term *= (z * z) / odd;
    sum += term;
  }
  return density(z) * sum;
}

type Eight = readonly [number, number, number, number, number, number, number, number];

const ratio = (r: number, [a0, a1, a2, a3, a4, a5, a6, a7]: Eight, [, b1, b2, b3, b4, b5, b6, b7]: Eight): number =>
  (((((((a7 * r + a6) * r + a5) * r + a4) * r + a3) * r + a2) * r + a1) * r + a0) /
  (((((((b7 * r + b6) * r + b5) * r + b4) * r + b3) * r + b2) * r + b1) * r + 1);

// AS 241, PPND16: |share − ½| up to 0.425, then √(−ln tail) up to 5, then above.
const MIDDLE: readonly [Eight, Eight] = [
  [
    3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946, 45921.95393154987, 67265.7709270087,
    33430.57558358813, 2509.0809287301227,
  ],
  [
    1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597, 39307.89580009271,
    28729.085735721943, 5226.495278852854,
  ],
];
const SIDE: readonly [Eight, Eight] = [
  [
    1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045, 1.2704582524523684,
    0.2417807251774506, 0.022723844989269184, 0.0007745450142783414,
  ],
  [
    1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008, 0.015198666563616457,
    0.0005475938084995345, 1.0507500716444169e-9,
  ],
];
const TAIL: readonly [Eight, Eight] = [
  [
    6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487, 0.026532189526576124,
    0.0012426609473880784, 0.000027115555687434876, 2.0103343992922881e-7,
  ],
  [
    1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615, 0.0007868691311456133, 0.000018463183175100548,
    1.421511758316446e-7, 2.0442631033899397e-15,
  ],
];

/** z with a tail above it, from 0 to 1. */
function quantileAbove(tail: number): number {
  const off = 0.5 - tail;
  if (Math.abs(off) <= 0.425) return off * ratio(0.180625 - off * off, ...MIDDLE);
  const r = Math.sqrt(-Math.log(off > 0 ? tail : 1 - tail));
  const z = r <= 5 ? ratio(r - 1.6, ...SIDE) : r === Infinity ? Infinity : ratio(r - 5, ...TAIL);
  return off > 0 ? z : -z;
}

/**
 * The normal distribution of mean 0 and standard deviation 1.
 *
 * @source quantile: M. J. Wichura, Algorithm AS 241, Appl. Statist. 37 (1988) 477
 */
export const normal: Continuous = {
  density,
  below: shareBelow,
  above: shareAbove,
  quantile: (share) => -quantileAbove(share),
  quantileAbove,
};
