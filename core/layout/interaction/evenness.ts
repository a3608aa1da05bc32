/** How even the forces of a joint are. */
export interface Evenness {
  readonly meanN: number;
  /** Largest less smallest force, over the mean. */
  readonly spread: number;
  /** Standard deviation over the mean, of these bolts and no sample. */
  readonly coefficientOfVariation: number;
}

/** What differs by less than so much of the mean is alike. */
const ROUNDING = 1e-12;

export function evennessOf(forcesN: ArrayLike<number>): Evenness {
  const count = forcesN.length;
  let [sum, least, most] = [0, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < count; i++) {
    const force = forcesN[i]!;
    sum += force;
    if (force < least) least = force;
    if (force > most) most = force;
  }
  const meanN = sum / count;
  let squares = 0;
  for (let i = 0; i < count; i++) squares += (forcesN[i]! - meanN) ** 2;
  const over = (figure: number) => (figure > ROUNDING * meanN ? figure / meanN : 0);
  return { meanN, spread: over(most - least), coefficientOfVariation: over(Math.sqrt(squares / count)) };
}
