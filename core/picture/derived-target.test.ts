import { expect, it } from 'vitest';
import { deriveTarget } from '../joint/derive-target.ts';
import { derivedPictures } from './derived-target.ts';

const derived = deriveTarget({
  thread: 'M12',
  propertyClass: '8.8',
  threadFriction: 0.1,
  bearingFriction: 0.1,
  utilization: 0.9,
  tighteningFactor: 1.6,
  plusMinusPercent: 5,
  torqueUnit: 'N·m',
  ownBolt: undefined,
  ownMaterial: undefined,
  ownLubricant: undefined,
  sources: ['own test'],
});
if (!derived.ok) throw new Error(derived.failure.kind);
const { derivation } = derived.value;
const [plot, shares] = derivedPictures(derivation, 'lbf·ft', 'en');
const marks = plot?.kind === 'plot' ? plot.plot.marks : [];

it('draws window, scatter and yield in the unit of the joint', () => {
  expect(marks.map(({ kind }) => kind)).toEqual(['window', 'band', 'line', 'limit', 'point']);
  expect(plot?.kind === 'plot' && plot.plot.x.label).toBe('Torque, lbf·ft');
  const [window] = marks;
  // 1 lbf·ft = 1.3558179483314004 N·m: NIST SP 811:2008, appendix B.
  expect(window?.kind === 'window' && window.to * 1.35581794833).toBeCloseTo(derivation.filled.upperNm, 9);
});

it('parts greatest from least preload by the tightening factor, everywhere', () => {
  const band = marks.find((mark) => mark.kind === 'band');
  const end = band?.points.at(-1);
  expect((end?.high ?? 0) / (end?.low ?? 1)).toBeCloseTo(1.6, 9);
});

it('draws yield above the whole window where the utilisation leaves room', () => {
  const limit = marks.find((mark) => mark.kind === 'limit');
  expect(limit?.at).toBeCloseTo(derivation.output.preloadN / 1000 / 0.9, 9);
});

it('shows where the torque goes, unless the derivation is older than that', () => {
  expect(shares?.kind === 'shares' && shares.parts.reduce((sum, part) => sum + part.share, 0)).toBeCloseTo(1, 9);
  const { shares: _, ...output } = derivation.output;
  expect(derivedPictures({ ...derivation, output }, 'N·m', 'en')).toHaveLength(1);
});
