import { describe, expect, it } from 'vitest';
import { LANGUAGES } from '../quantity/language.ts';
import { REASON_CODES } from '../verdict/verdict.ts';
import { sayReason } from './reasons.ts';

const above = { code: 'above-upper', quantity: 'torque', value: 92.4, limit: 88 } as const;

describe('sayReason', () => {
  it.each([
    ['en', 'Torque 92.4\u00a0N·m is above the upper limit 88.0\u00a0N·m.'],
    ['de', 'Das Drehmoment 92,4\u00a0N·m liegt über dem oberen Grenzwert 88,0\u00a0N·m.'],
    ['fr', 'Le couple 92,4\u00a0N·m est au-dessus de la limite supérieure 88,0\u00a0N·m.'],
    ['es', 'El par 92,4\u00a0N·m está por encima del límite superior 88,0\u00a0N·m.'],
  ] as const)('says it in %s', (language, text) => {
    expect(sayReason(above, language, 'N·m')).toBe(text);
  });

  it('says it in the unit of the work', () => {
    expect(sayReason({ ...above, value: 135.58, limit: 122.02 }, 'en', 'lbf·ft')).toBe(
      'Torque 100.0\u00a0lbf·ft is above the upper limit 90.0\u00a0lbf·ft.',
    );
  });

  it('tells apart what rounding would make look equal', () => {
    expect(sayReason({ ...above, value: 88.04 }, 'en', 'N·m')).toBe(
      'Torque 88.04\u00a0N·m is above the upper limit 88.00\u00a0N·m.',
    );
    expect(sayReason({ code: 'below-lower', quantity: 'angle', value: 59.96, limit: 60 }, 'en', 'N·m')).toBe(
      'Angle 59.96° is below the lower limit 60.00°.',
    );
  });

  it('tells degrees a second of a speed', () => {
    expect(sayReason({ code: 'too-fast', quantity: 'speed', value: 41, limit: 30 }, 'en', 'N·m')).toBe(
      'Turned too fast: 41.0°/s, limit 30.0°/s.',
    );
  });

  it.each(LANGUAGES)('closes the gap of a figure that is not told, in %s', (language) => {
    for (const code of REASON_CODES) {
      const text = sayReason({ code }, language, 'N·m');
      expect(text).toMatch(/^\p{Lu}.*\.$/u);
      expect(text).not.toMatch(/[{}]| {2}| \.| ,/);
    }
  });
});
