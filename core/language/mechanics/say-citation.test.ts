import { describe, expect, it } from 'vitest';
import { CALCULATIONS, calculate } from '../../calculations/registry.ts';
import { LANGUAGES } from '../../quantity/language.ts';
import { sayCitation } from './say-citation.ts';

/** Names of publications and their sections stay as they are; nothing else of them is English. */
const NAMES = /RCSC Specification for Structural Joints Using High-Strength Bolts/g;

function citationsIn(value: unknown): readonly string[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, part]) =>
    (key === 'source' || key === 'clause') && typeof part === 'string' ? [part] : citationsIn(part),
  );
}

const MECHANICS = ['assembly-torque', 'preload', 'friction', 'compliance', 'tightening-angle', 'joint-check'] as const;
const WIDER = {
  'tightening-angle': { turnOfNut: 'RCSC', preloadN: undefined, boltLengthMm: 120 },
  'joint-check': {
    axialLoadLowN: 0,
    gasketAreaMm2: 1000,
    gasketSeatingMPa: 5,
    gasketServiceMPa: 3,
    gasketLimitMPa: 50,
  },
};
const CITED = MECHANICS.flatMap((name) => {
  const example = CALCULATIONS.find((one) => one.name === name)?.example ?? {};
  const more = Object.entries(WIDER).find(([known]) => known === name)?.[1] ?? {};
  return [example, Object.assign({}, example, more)].flatMap((input) => {
    const result = calculate(name, Object.assign({}, input, name === 'preload' ? { draws: 0 } : {}));
    if (!result.ok) throw new Error(`${name}: ${JSON.stringify(result.failure)}`);
    return citationsIn(result.value);
  });
});

describe('a citation', () => {
  it('is said in the language of the reader, names and numbers as they are', () => {
    expect(LANGUAGES.map((language) => sayCitation('ISO 16047:2005, nut factor', language))).toEqual([
      'ISO 16047:2005, nut factor',
      'ISO 16047:2005, Drehmomentbeiwert',
      'ISO 16047:2005, coefficient de couple',
      'ISO 16047:2005, factor de par',
    ]);
    expect(sayCitation('VDI 2230-1:2015, 5.1: compliances in a row', 'fr')).toBe(
      'VDI 2230-1:2015, 5.1\u00a0: souplesses en série',
    );
    expect(sayCitation('ISO 898-2:1992, table 5 (from memory)', 'es')).toBe('ISO 898-2:1992, tabla 5 (de memoria)');
  });

  it('stays as it is where no phrase is known', () => {
    for (const language of LANGUAGES) expect(sayCitation('Drawing KH-114, B', language)).toBe('Drawing KH-114, B');
  });

  it('of a calculation of mechanics keeps no English word in another language', () => {
    expect(new Set(CITED).size).toBeGreaterThan(30);
    const english = new Set(CITED.flatMap((cited) => cited.replaceAll(NAMES, '').match(/\b[a-z]{2,}\b/g) ?? []));
    const left = CITED.flatMap(
      (cited) =>
        sayCitation(cited, 'de')
          .replaceAll(NAMES, '')
          .match(/\b[a-z]{2,}\b/g) ?? [],
    );
    expect(left.filter((word) => english.has(word))).toEqual([]);
  });
});
