import { type Language, showNumber } from '@clampwright/core/quantity';

/** Digits enough to hold any figure of the trade, few enough to hide the noise of binary fractions. */
const DIGITS = 12;

/** A figure as it stands in a field: nothing of it is rounded away. */
export const asTyped = (value: number, language: Language): string =>
  showNumber(Number(value.toPrecision(DIGITS)), language);
