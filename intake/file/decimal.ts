import { invalid, ok, type Result } from '@clampwright/core/failure';
import type { Mapping } from './mapping.ts';

const DECIMAL = { point: /^[+-]?\d+(\.\d+)?$/, comma: /^[+-]?\d+(,\d+)?$/ } as const;
const LONGEST = 40;

/**
 * Reads a figure as the mapping says that the file writes it: digits and at most one decimal sign, no grouping.
 *
 * @param text  figure; blanks around it and U+2212 for the minus are taken
 * @param field named in the refusal
 */
export function readDecimal(text: string, sign: Mapping['decimalSign'], field: string): Result<number> {
  const plain = text.trim().replace('\u2212', '-');
  if (plain.length <= LONGEST && DECIMAL[sign].test(plain))
    return ok(Number(sign === 'comma' ? plain.replace(',', '.') : plain));
  return invalid(field, whyNot(plain, sign), `a number such as ${sign === 'comma' ? '85,4' : '85.4'}`);
}

function whyNot(plain: string, sign: Mapping['decimalSign']): string {
  const other = sign === 'comma' ? '.' : ',';
  if (plain === '') return 'There is no figure.';
  if (plain.length > LONGEST) return `More than ${LONGEST} characters are no figure.`;
  if (/^[+-]?\d+[.,]\d+$/.test(plain))
    return `“${plain}” has a ${other === ',' ? 'comma' : 'point'}, but the mapping says that the decimal sign is a ${sign}.`;
  if (/^[+-]?[\d.,' \u00a0\u202f]+$/.test(plain))
    return `“${plain}” has digits in groups, or more than one decimal sign.`;
  return `“${plain}” is no figure.`;
}
