import type { Language } from '../../quantity/language.ts';
import { showNumber } from '../../quantity/show-number.ts';
import type { Drift, Outlook } from '../../wrench/drift.ts';
import { sayMonth } from '../dates.ts';
import { sayCare } from './say.ts';

/** What the drift of a wrench says, in sentences: its trend, and when it leaves its limits. */
export const sayDrift = (
  { slopePercentPerYear, slopeHalfWidth, isTrend, outlook }: Drift,
  language: Language,
): string =>
  [
    ...(slopePercentPerYear === undefined || slopeHalfWidth === undefined
      ? []
      : [
          sayCare(language, 'drift.trend', {
            rate: showNumber(slopePercentPerYear, language, { decimals: 2 }),
            half: showNumber(slopeHalfWidth, language, { decimals: 2 }),
          }),
          ...(isTrend ? [] : [sayCare(language, 'drift.no-trend')]),
        ]),
    ...sayOutlook(outlook, language),
  ].join(' ');

function sayOutlook(outlook: Outlook, language: Language): readonly string[] {
  switch (outlook.kind) {
    case 'too-few':
      return [sayCare(language, 'drift.too-few', { count: outlook.count })];
    case 'out-already':
      return [sayCare(language, 'drift.out-already')];
    case 'stays':
      return [sayCare(language, 'drift.stays', { years: outlook.years })];
    case 'leaves': {
      const { about, earliest } = outlook;
      return [
        ...(about === undefined ? [] : [sayCare(language, 'drift.leaves', { when: sayMonth(about, language) })]),
        sayCare(language, 'drift.band', { earliest: sayMonth(earliest, language) }),
      ];
    }
  }
}
