import { expect, it } from 'vitest';
import { unitInName, withoutUnit } from './unit-in-name.ts';

it.each([
  ['torqueNm', 'torque', 'N·m'],
  ['proofLoadN', 'proofLoad', 'N'],
  ['stressAreaMm2', 'stressArea', 'mm²'],
  ['tensileStrengthMPa', 'tensileStrength', 'MPa'],
  ['stiffnessNPerMm', 'stiffness', 'N/mm'],
  ['speedLimitDegPerS', 'speedLimit', '°/s'],
  ['boltMmPerN', 'bolt', 'mm/N'],
  ['slopeNPerDeg', 'slope', 'N/°'],
  ['expansionPerK', 'expansion', '1/K'],
  ['boltRiseK', 'boltRise', 'K'],
  ['embeddingUm', 'embedding', 'µm'],
  ['sharePercent', 'share', '%'],
])('%s is %s in %s', (name, plain, unit) => {
  expect([withoutUnit(name), unitInName(name)]).toEqual([plain, unit]);
});

it.each(['factor', 'count', 'from', 'N', 'probabilityBelowN'])('%s carries no unit', (name) => {
  expect([withoutUnit(name), unitInName(name)]).toEqual([name, undefined]);
});
