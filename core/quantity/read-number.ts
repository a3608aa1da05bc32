import { invalid, ok, type Result } from '../failure/failure.ts';
import { type Language, NUMBER_STYLES, type NumberStyle } from './language.ts';

const LONGEST = 40;
const SPACES = /[ \u00a0\u2007\u2009\u202f]/g;
const GROUPS_OF_THREE = /^[1-9]\d{0,2}(_\d{3})+$/;

/**
 * Reads a decimal number as people of a language write it. Nothing is guessed: misplaced grouping, the other decimal
 * sign and figures that two people would read differently are refused.
 *
 * @param text     such as `85`, `12.5` in English, `12,5` in German; groups of three may stand apart by spaces
 * @param language whose decimal sign counts
 * @param field    named in the refusal
 * @returns the number; otherwise what is wrong with the text and how to write it
 */
export function readNumber(text: string, language: Language, field = 'number'): Result<number> {
  const style = NUMBER_STYLES[language];
  const typed = text.trim();
  const refuse = (message: string, expected = example(style)) => invalid(field, message, expected);
  const digits = typed.replace(/^[-+\u2212]/, '');
  if (digits === '') return refuse('There is no figure.');
  if (typed.length > LONGEST) return refuse(`More than ${LONGEST} characters are no number.`);
  const stray = strayCharacter(digits);
  if (stray !== undefined) return refuse(`“${typed}” holds “${stray}”, which is no part of a decimal number.`);
  const [whole = '', fraction, ...more] = digits.split(style.decimalSign);
  if (more.length > 0) return refuse(`“${typed}” holds more than one decimal sign “${style.decimalSign}”.`);
  const grouped = style.groupSign === undefined ? whole : whole.replaceAll(style.groupSign, '_');
  if (grouped !== whole && fraction === undefined && looksLikeDecimal(grouped)) {
    return refuse(...ambiguity(typed, whole, style));
  }
  const plain = withoutGroups(grouped);
  if (plain === undefined || (fraction !== undefined && !/^\d+$/.test(fraction))) {
    return refuse(...misplaced(typed, style));
  }
  const size = Number(`${plain === '' ? '0' : plain}.${fraction ?? '0'}`);
  return ok(/^[-\u2212]/.test(typed) && size !== 0 ? -size : size);
}

const example = (style: NumberStyle) => `a number as written in ${style.name}, such as 12${style.decimalSign}5`;

const strayCharacter = (digits: string): string | undefined => digits.replace(SPACES, '').match(/[^\d.,]/u)?.[0];

/** One group sign before exactly three digits: `1,234` is 1234 to one reader and 1.234 to another. */
const looksLikeDecimal = (grouped: string): boolean => /^\d{1,3}_\d{3}$/.test(grouped) && !grouped.startsWith('0');

/** The digits alone, or undefined when groups are not of three or mix their separators. */
function withoutGroups(whole: string): string | undefined {
  if (/^\d*$/.test(whole)) return whole;
  const spaced = whole.replace(SPACES, '_');
  const mixed = whole.includes('_') && spaced !== whole;
  return !mixed && GROUPS_OF_THREE.test(spaced) ? spaced.replaceAll('_', '') : undefined;
}

function ambiguity(typed: string, whole: string, style: NumberStyle): [message: string, expected: string] {
  const plain = whole.replace(/[.,]/, '');
  const decimal = whole.replace(/[.,]/, style.decimalSign);
  return [
    `“${typed}” can be read as ${plain} or as ${decimal}.`,
    `${plain} without a separator, or ${decimal} with the decimal sign of ${style.name}`,
  ];
}

function misplaced(typed: string, style: NumberStyle): [message: string, expected: string] {
  const other = style.decimalSign === '.' ? ',' : '.';
  const mended = typed.replace(other, style.decimalSign);
  const isOtherSign = /^[-+\u2212]?\d*[.,]\d+$/.test(typed) && typed.includes(other);
  if (isOtherSign) return [`The decimal sign in ${style.name} is “${style.decimalSign}”, not “${other}”.`, mended];
  return [`“${typed}” is no decimal number: its digits or separators are misplaced.`, example(style)];
}
