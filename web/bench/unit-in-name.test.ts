import { expect, it } from 'vitest';
import { changeableUnit, unitChoices, unitInName } from './unit-in-name.ts';

it.each([
  ['torqueNm', 'N·m'],
  ['proofLoadN', 'N'],
  ['interval95N', 'N'],
  ['stressAreaMm2', 'mm²'],
  ['tensileStrengthMPa', 'MPa'],
  ['stiffnessNPerMm', 'N/mm'],
  ['boltMmPerN', 'mm/N'],
  ['mmPerN', 'mm/N'],
  ['stiffnessNmPerDeg', 'N·m/°'],
  ['speedLimitDegPerS', '°/s'],
  ['sharePercent', '%'],
  ['slopeNPerDeg', 'N/°'],
  ['expansionPerK', '1/K'],
  ['boltRiseK', 'K'],
  ['embeddingUm', 'µm'],
])('%s is in %s', (name, unit) => {
  expect(unitInName(name)).toBe(unit);
});

it.each(['factor', 'count', 'from', 'N', 'edition', 'probabilityBelowN'])('%s carries no unit', (name) => {
  expect(unitInName(name)).toBeUndefined();
  expect(unitChoices(name)).toEqual([]);
});

it('offers the units of the same quantity, its own first', () => {
  expect(unitChoices('torqueNm')).toEqual(['N·m', 'lbf·ft', 'lbf·in', 'kgf·m']);
  expect(unitChoices('preloadN')).toEqual(['N', 'kN', 'lbf', 'kgf']);
  expect(changeableUnit('holeMm')).toBe('mm');
});

it('offers none for a unit made of several', () => {
  expect(unitChoices('boltMmPerN')).toEqual([]);
});
