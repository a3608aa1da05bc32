import { invalid } from '../failure/failure.ts';

/** Refuses the first share of a round that is less than the one before; undefined where they rise or stay. */
export function fallingShare(roundShares: readonly number[]) {
  const falls = roundShares.findIndex((share, index) => index > 0 && share < roundShares[index - 1]!);
  if (falls < 0) return undefined;
  const message = 'A wrench never loosens, so no share is less than the one before.';
  return invalid(`roundShares[${falls}]`, message, `at least ${roundShares[falls - 1]}`);
}
