import { describe, expect, it } from 'vitest';
import { LANGUAGES } from '../quantity/language.ts';
import { evaluateCalibration } from '../wrench/evaluate-calibration.ts';
import { aCalibration, aComparison } from '../wrench/testing/a-calibration.ts';
import { aWrench } from '../wrench/testing/a-wrench.ts';
import { type CertifiedRun, certificateDocument } from './certificate-document.ts';
import type { Document } from './document.ts';

const calibration = aCalibration();

const run = (share = 1): CertifiedRun => {
  const evaluated = evaluateCalibration({
    type: 'I',
    class: 'C',
    maxTorqueNm: 200,
    resolutionNm: 0.1,
    points: aComparison().points.map((point) => ({
      ...point,
      referenceNm: point.referenceNm.map((one) => one * share),
    })),
    referenceUncertaintyPercent: 0.5,
  });
  if (!evaluated.ok) throw new Error(JSON.stringify(evaluated.failure));
  return { direction: 'clockwise', evaluated: evaluated.value };
};

const written = (language: (typeof LANGUAGES)[number], left?: readonly CertifiedRun[], found = [run()]): Document =>
  certificateDocument({ calibration, wrench: aWrench(), found, left }, { language, unit: 'N·m' });

const texts = (document: Document): string => JSON.stringify(document);

describe('a certificate', () => {
  it.each(LANGUAGES)('leaves nothing unfilled in %s', (language) => {
    expect(texts(written(language)).match(/\{[a-z]+\}/g)).toBeNull();
  });

  it('tells the wrench, the reference, each point and each contribution', () => {
    const document = written('en');
    const tables = document.blocks.filter((block) => block.kind === 'table');
    expect(tables.map(({ name, groups }) => [name, groups[0]?.rows.length])).toEqual([
      ['points', 4],
      ['budget', 8],
    ]);
    for (const told of ['serial number T-1', 'R-2026-1', 'C-2', '0.5\u00a0% (k = 2)', 'assumed, not measured'])
      expect(texts(document)).toContain(told);
  });

  it('is judged as it was left, and shows how it was found', () => {
    const document = written('en', [run()], [run(0.9)]);
    const [big] = document.blocks;
    expect(big).toMatchObject({ kind: 'facts', facts: [{ value: 'conforms' }, {}, {}] });
    expect(texts(document)).toContain('does not conform');
    expect(document.blocks.filter((block) => block.kind === 'plot')).toHaveLength(2);
  });
});
