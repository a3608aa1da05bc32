import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fastener } from './fastener.ts';
import { profileOf } from './profile.ts';
import { PROPERTY_CLASSES } from './property-class.ts';
import { THREADS } from './thread.ts';

fc.configureGlobal({ seed: 24 });

const dataOf = (thread: string, propertyClass?: string) => {
  const data = fastener(thread, propertyClass);
  if (!data.ok) throw new Error(JSON.stringify(data.failure));
  return data.value;
};

describe('threads', () => {
  it('have one designation each', () => {
    expect(new Set(THREADS.map(({ designation }) => designation)).size).toBe(THREADS.length);
  });

  it.each(THREADS)('$designation: root, minor, stress, pitch and major diameter follow in size', (thread) => {
    const { minorDiameterMm, pitchDiameterMm, stressAreaMm2 } = profileOf(thread);
    const stressDiameterMm = Math.sqrt((4 * stressAreaMm2) / Math.PI);
    const inOrder = [minorDiameterMm - thread.pitchMm, minorDiameterMm, pitchDiameterMm, thread.majorDiameterMm];
    expect(inOrder.toSorted((a, b) => a - b)).toEqual(inOrder);
    expect(stressDiameterMm > minorDiameterMm && stressDiameterMm < pitchDiameterMm).toBe(true);
  });

  it('carry more the larger they are and the finer their pitch', () => {
    const pair = fc.tuple(fc.constantFrom(...THREADS), fc.constantFrom(...THREADS));
    fc.assert(
      fc.property(pair, ([a, b]) => {
        fc.pre(a.system === b.system && a.majorDiameterMm >= b.majorDiameterMm && a.pitchMm <= b.pitchMm);
        expect(profileOf(a).stressAreaMm2).toBeGreaterThanOrEqual(profileOf(b).stressAreaMm2);
      }),
    );
  });
});

describe('fastener', () => {
  it('gives geometry alone when no class is named', () => {
    const data = dataOf('M10');
    expect(data).toMatchObject({ thread: 'M10', majorDiameterMm: 10, pitchMm: 1.5, remarks: [] });
    expect(data).not.toHaveProperty('proofLoadN');
    expect(data.pitchDiameterMm).toBeCloseTo(9.026, 3);
  });

  it('keeps inch sizes exact in millimetres', () => {
    expect(dataOf('3/8-16 UNC')).toMatchObject({ majorDiameterMm: 9.525, pitchMm: 1.5875 });
  });

  it('gives loads that are stress times stress area', () => {
    const data = dataOf('M12', '10.9');
    expect(data.proofLoadN).toBe(830 * data.stressAreaMm2);
    expect(data.tensileLoadN).toBe(1040 * data.stressAreaMm2);
  });

  it.each([
    ['M16', '8.8', 580],
    ['M18', '8.8', 600],
  ])('%s %s has %d MPa under proof load: the step of class 8.8', (thread, propertyClass, proofStressMPa) => {
    expect(dataOf(thread, propertyClass)).toMatchObject({ proofStressMPa });
  });

  it.each([
    ['3/4-10 UNC', '2', 55],
    ['7/8-9 UNC', '2', 33],
    ['1-8 UNC', '5', 85],
    ['1 1/8-7 UNC', '5', 74],
    ['1 1/2-6 UNC', '8', 120],
  ])('%s grade %s has %d ksi under proof load', (thread, propertyClass, ksi) => {
    expect(dataOf(thread, propertyClass).proofStressMPa).toBeCloseTo(ksi * 6.894757293168361, 10);
  });

  it.each([['8.8'], ['class 8.8'], ['8,8'], [' 8.8 ']])('reads the class “%s”', (text) => {
    expect(dataOf('M10', text).propertyClass).toBe('8.8');
  });

  it.each([['5'], ['grade 5'], ['Grade 5'], ['gr. 5'], ['SAE 5'], ['SAE J429 grade 5'], ['sae j429 Gr 5']])(
    'reads the grade “%s”',
    (text) => {
      expect(dataOf('1/2-13 UNC', text).propertyClass).toBe('SAE J429 grade 5');
    },
  );

  it.each([
    ['M12', 'a4-80', 'A4-80'],
    ['M12', 'ISO 3506-1 A2 70', 'A2-70'],
    ['M24', 'B7', 'ASTM A193 B7'],
    ['1-8 UNC', 'grade B7', 'ASTM A193 B7'],
    ['2 3/4-8 UN', 'ASTM A193 B7', 'ASTM A193 B7'],
    ['3/4-10 UNC', 'F3125 A325', 'ASTM F3125 A325'],
    ['3/4-10 UNC', 'A490', 'ASTM F3125 A490'],
    ['1/2-13 UNC', 'A574', 'ASTM A574'],
    ['M20', 'A320 L7', 'ASTM A320 L7'],
  ])('reads on %s the class “%s”', (thread, text, propertyClass) => {
    expect(dataOf(thread, text)).toMatchObject({ propertyClass });
  });

  it('gives no proof load where the standard sets none', () => {
    const data = dataOf('M12', 'A4-80');
    expect(data).toMatchObject({ yieldStrengthMPa: 600, tensileLoadN: 800 * data.stressAreaMm2 });
    expect(data).not.toHaveProperty('proofLoadN');
  });

  it.each([
    ['M20', '9.8', '9.8 does not exist for M20 (ISO 898-1).', 'one of 4.6, 4.8, 5.6, 5.8, 6.8, 8.8, 10.9, 12.9'],
    ['M10', 'grade 5', 'SAE J429 grade 5 belongs to Unified threads; M10 is ISO metric.', 'one of 4.6'],
    [
      '3/8-16 UNC',
      '8.8',
      '8.8 belongs to ISO metric threads; 3/8-16 UNC is Unified.',
      'one of SAE J429 grade 1, SAE J429 grade 2',
    ],
    ['2-4.5 UNC', '8', 'SAE J429 grade 8 does not exist for 2-4.5 UNC (SAE J429).', 'one of ASTM A193 B7'],
    ['M42', 'A2-70', 'A2-70 does not exist for M42 (ISO 3506-1).', 'one of 4.6'],
    ['M10', 'A325', 'ASTM F3125 A325 belongs to Unified threads; M10 is ISO metric.', 'one of 4.6'],

    ['M10', '7.7', '“7.7” is no property class known here.', 'one of 4.6'],
    ['M10', '', 'There is no property class.', 'one of 4.6'],
  ])('refuses %s with class “%s”', (thread, propertyClass, message, expected) => {
    expect(fastener(thread, propertyClass)).toMatchObject({
      failure: { field: 'propertyClass', message, expected: expect.stringContaining(expected) },
    });
  });

  it.each([
    ['M42', '10.9'],
    ['M6x0.75', '8.8'],
    ['#8-32 UNC', '5'],
    ['M27', 'A4-80'],
  ])('says that %s %s goes beyond the standard', (thread, propertyClass) => {
    expect(dataOf(thread, propertyClass).remarks.map(({ message }) => message)).toEqual([
      expect.stringContaining('only where the maker says so'),
    ]);
  });

  it('knows a proof stress below yield below tensile strength in every class', () => {
    for (const { proofStressMPa = 0, yieldStrengthMPa, tensileStrengthMPa } of PROPERTY_CLASSES) {
      expect(proofStressMPa < yieldStrengthMPa && yieldStrengthMPa < tensileStrengthMPa).toBe(true);
    }
  });
});
