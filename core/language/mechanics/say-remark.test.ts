import { describe, expect, it } from 'vitest';
import { CALCULATIONS, type CalculationName, calculate } from '../../calculations/registry.ts';
import { LANGUAGES } from '../../quantity/language.ts';
import { placeholders } from '../catalogue.ts';
import { type Remark, remark } from './remark.ts';
import { mechanicsCatalogue } from './say.ts';
import { sayRemark } from './say-remark.ts';

describe('a remark', () => {
  it('is said in each language with the figures, decimal sign and unit of the reader', () => {
    const thin = remark('nut-proof', { proofLoadN: 48_872.4 });
    expect(LANGUAGES.map((language) => sayRemark(thin, language))).toEqual([
      'The preload is above the proof load of the nut, 48.9\u00a0kN.',
      'Die Vorspannkraft liegt über der Prüfkraft der Mutter, 48,9\u00a0kN.',
      'La précharge dépasse la charge d’épreuve de l’écrou, 48,9\u00a0kN.',
      'La precarga supera la carga de prueba de la tuerca, 48,9\u00a0kN.',
    ]);
  });

  it('keeps its figures unrounded beside the English sentence', () => {
    const yields = remark('shank-yields', { yieldShare: 1.0456 });
    expect(yields).toMatchObject({ code: 'shank-yields', figures: { yieldShare: 1.0456 } });
    expect(yields.message).toContain('105\u00a0% of its yield strength');
  });

  it('says words of a table in the language, too', () => {
    const factor = remark('factor-of-method', { factor: 1.4, method: 'hydraulic', had: 'from memory' });
    expect(sayRemark(factor, 'de')).toBe(
      'Der Anziehfaktor ist 1,4, das obere Ende für: hydraulisch (VDI 2230-1, Tabelle A8, aus dem Gedächtnis).',
    );
  });

  it('keeps its own English where a later version gave it', () => {
    expect(sayRemark({ code: 'from-the-future', figures: {}, message: 'As it was.' }, 'fr')).toBe('As it was.');
  });
});

/** Every remark anywhere in a result. */
function remarksIn(value: unknown): readonly Remark[] {
  if (typeof value !== 'object' || value === null) return [];
  const found = Object.values(value).flatMap(remarksIn);
  if (!('code' in value && 'figures' in value && 'message' in value)) return found;
  const { code, message } = value;
  const figures = Object.fromEntries(Object.entries(value.figures ?? {}));
  return typeof code === 'string' && typeof message === 'string' ? [{ code, figures, message }, ...found] : found;
}

const answers = (name: CalculationName, more: object = {}) => {
  const example = CALCULATIONS.find((one) => one.name === name)?.example ?? {};
  const result = calculate(name, Object.assign({}, example, more));
  return result.ok ? remarksIn(result.value) : [];
};

describe('what calculations remark', () => {
  const remarks = [
    ...CALCULATIONS.flatMap(({ name }) => answers(name, name === 'preload' ? { draws: 0 } : {})),
    ...answers('joint-check', { threadFriction: undefined, boltRiseK: 40, axialLoadN: 60_000, nutClass: '5' }),
    ...answers('assembly-torque', { threadFriction: 0.4, bearingFriction: 0.02 }),
    ...answers('tightening-angle', { preloadN: undefined, angleDeg: 180, prevailingTorqueNm: 10 }),
  ];

  it('is known to the catalogues, and leaves no placeholder open in any language', () => {
    expect(new Set(remarks.map(({ code }) => code)).size).toBeGreaterThan(12);
    for (const said of remarks) {
      expect(mechanicsCatalogue('en')).toHaveProperty([`remark.${said.code}`]);
      expect(LANGUAGES.flatMap((language) => placeholders(sayRemark(said, language)))).toEqual([]);
      expect(sayRemark(said, 'en')).toBe(said.message);
    }
  });
});
