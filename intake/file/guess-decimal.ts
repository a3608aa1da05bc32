import type { Mapping } from './mapping.ts';

export interface GuessedDecimal {
  readonly sign: Mapping['decimalSign'];
  /** Why it is not sure; undefined: it is. */
  readonly doubt: string | undefined;
}

const ONE_SIGN = /^[+-]?(\d+)([.,])(\d+)$/;

/**
 * Decimal sign of figures. `1,234` tells nothing, as two people read it differently; `1,23` and `0,234` do.
 *
 * @param texts cells of figures
 */
export function guessDecimal(texts: readonly string[]): GuessedDecimal {
  const told = { ',': 0, '.': 0 };
  const open = { ',': 0, '.': 0 };
  for (const text of texts) {
    const [, whole = '', sign, fraction = ''] = ONE_SIGN.exec(text.trim()) ?? [];
    if (sign !== ',' && sign !== '.') continue;
    const groupOfThree = fraction.length === 3 && whole.length <= 3 && !whole.startsWith('0');
    (groupOfThree ? open : told)[sign] += 1;
  }
  const sign = told[','] + open[','] > told['.'] + open['.'] ? 'comma' : 'point';
  return { sign, doubt: doubtOf(told, open) };
}

type Counts = Readonly<Record<',' | '.', number>>;

function doubtOf(told: Counts, open: Counts): string | undefined {
  const [comma, point] = [told[','] > 0, told['.'] > 0];
  if (comma && point) return 'Some figures have a decimal comma and others a decimal point.';
  if (comma && open['.'] > 0) return 'Some figures have a decimal comma; in others a point stands before three digits.';
  if (point && open[','] > 0) return 'Some figures have a decimal point; in others a comma stands before three digits.';
  if (comma || point) return undefined;
  if (open[','] + open['.'] > 0)
    return 'Three digits stand after the sign in every figure: it may part decimals or thousands.';
  return 'No figure has decimals, so nothing tells the decimal sign.';
}
