import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** A seeded source of chance: the same seed gives the same row of numbers. */
export interface Chance {
  /** Evenly spread over [lowest, highest). */
  readonly between: (lowest: number, highest: number) => number;
  /** Normally distributed, cut at three standard deviations: a hand does not slip out of the world. */
  readonly normal: (mean: number, deviation: number) => number;
}

const WARM_UP_DRAWS = 64;

/** @param seed any integer */
export function chanceFrom(seed: number): Chance {
  const generator = xoroshiro128plus(seed);
  // Neighbouring seeds begin alike; after some draws they have nothing in common.
  for (let i = 0; i < WARM_UP_DRAWS; i++) generator.next();
  const between = (lowest: number, highest: number) => lowest + (highest - lowest) * uniformFloat64(generator);
  // Box and Muller 1958; 1 - u keeps the logarithm away from zero.
  const standard = () => Math.sqrt(-2 * Math.log(1 - between(0, 1))) * Math.cos(2 * Math.PI * between(0, 1));
  const normal = (mean: number, deviation: number) => mean + deviation * Math.max(-3, Math.min(3, standard()));
  return { between, normal };
}
