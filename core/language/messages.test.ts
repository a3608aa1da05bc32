import { describe, expect, it } from 'vitest';
import type { Failure } from '../failure/failure.ts';
import { LANGUAGES } from '../quantity/language.ts';
import type { Notice, Objection } from '../wrench/objection.ts';
import { sayFailure, sayFailureAtField } from './failures.ts';
import { sayNotice, sayObjection } from './objections.ts';
import { sayCautions, sayNeed, sayVerdict } from './words.ts';

const FAILURES: readonly Failure[] = [
  { kind: 'invalid', field: 'torque', message: 'there is no figure', expected: 'a number' },
  { kind: 'not-found', what: 'wrench', id: 'W-12' },
  { kind: 'conflict', message: 'Somebody else was faster.', current: {} },
  { kind: 'forbidden', action: 'accept', needs: 'lead' },
  { kind: 'unavailable', message: 'the disk is full', remedy: 'make room and start again' },
];

const at = { stage: 2, round: 1 };
const OBJECTIONS: readonly Objection[] = [
  { code: 'never-calibrated' },
  { code: 'calibration-overdue', dueOn: '2026-02-28', daysOver: 12 },
  { code: 'impossible-adapter', adapterMm: 400, adapterAngleDeg: 180, leverMm: 300 },
  { code: 'shows-no-angle', stage: 2 },
  { code: 'below-range', ...at, settingNm: 8, lowestNm: 10 },
  { code: 'above-range', ...at, settingNm: 410, highestNm: 400 },
  { code: 'too-uncertain', ...at, expandedUncertaintyNm: 9, widthNm: 16 },
  { code: 'torque-too-coarse', ...at, resolutionNm: 1, widthNm: 4 },
  { code: 'angle-too-coarse', stage: 2, resolutionDeg: 1, widthDeg: 6 },
];
const NOTICES: readonly Notice[] = [
  { code: 'calibration-soon', dueOn: '2026-02-28', daysLeft: 12 },
  { code: 'uncertainty-ratio', ...at, ratio: 2.4 },
  { code: 'wind-up-unknown', stage: 2 },
];

describe('sayFailure', () => {
  it.each(LANGUAGES)('leaves nothing unfilled in %s', (language) => {
    for (const failure of FAILURES) expect(sayFailure(failure, language)).not.toMatch(/[{}]/);
  });

  it('names field and wish', () => {
    expect(sayFailure(FAILURES[0]!, 'en')).toBe('torque: there is no figure. Wanted: a number.');
    expect(sayFailureAtField(FAILURES[0]!, 'en')).toBe('there is no figure. Wanted: a number.');
  });

  it('names the role that is needed', () => {
    expect(sayFailure(FAILURES[3]!, 'fr')).toBe(
      'accept demande le rôle\u00a0: responsable. S’adresser à quelqu’un qui l’a.',
    );
  });
});

describe('sayObjection and sayNotice', () => {
  it.each(LANGUAGES)('leave nothing unfilled in %s', (language) => {
    for (const objection of OBJECTIONS) expect(sayObjection(objection, language, 'N·m')).not.toMatch(/[{}]/);
    for (const notice of NOTICES) expect(sayNotice(notice, language)).not.toMatch(/[{}]/);
  });

  it('speak in the unit of the work', () => {
    expect(sayObjection(OBJECTIONS[5]!, 'de', 'N·m')).toBe(
      'Stufe 2, Durchgang 1 braucht die Einstellung 410,0\u00a0N·m, und der Schlüssel endet bei 400,0\u00a0N·m.',
    );
  });
});

describe('single words', () => {
  it('are the trade’s own', () => {
    expect(LANGUAGES.map((language) => sayVerdict('doubtful', language))).toEqual([
      'doubtful',
      'zweifelhaft',
      'douteux',
      'dudoso',
    ]);
    expect(sayNeed('loosen', 'es')).toBe('aflojar primero');
  });

  it.each(LANGUAGES)('give all seven standing cautions in %s', (language) => {
    expect(new Set(sayCautions(language)).size).toBe(7);
  });
});
