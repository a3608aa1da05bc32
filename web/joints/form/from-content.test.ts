import { type JointContent, jointContentSchema } from '@clampwright/core/joint';
import { LANGUAGES } from '@clampwright/core/quantity';
import { expect, it } from 'vitest';
import { formOf } from './from-content.ts';
import { readJoint } from './read.ts';

const CONTENT: JointContent = jointContentSchema.parse({
  name: 'Cover',
  fastener: {
    thread: 'M10',
    description: 'Hexagon bolt',
    lubricant: 'none',
    reuse: 'reusable',
    prevailing: { by: 'locking', highestNm: 6 },
    stiffnessNPerMm: 412_500.5,
  },
  layout: { kind: 'rectangle', rows: 3, columns: 6, pitchXMm: 62.5, pitchYMm: 120, edgeOnly: true },
  stages: [
    {
      kind: 'torque-and-angle',
      torque: {
        lowerNm: 36.1,
        targetNm: 38,
        upperNm: 39.9,
        typed: { form: 'plus-minus', target: '38,0', plusMinus: '1,9', unit: 'N·m' },
      },
      angle: {
        lowerDeg: 20,
        targetDeg: 30,
        upperDeg: 40,
        typed: { form: 'limits', lower: '20', upper: '40', unit: 'deg' },
      },
      angleFromNm: 12.5,
      speedLimitDegPerS: 45,
      rounds: [{ share: 1, order: { method: 'from-the-middle' } }],
    },
  ],
  numbersSource: { kind: 'standard', text: 'Gear cover sheet 3' },
  cautions: ['Drain the oil first.'],
  rework: { rule: 'ask-lead', underContinues: false, maximumAttempts: 2 },
  decisionRule: { kind: 'guarded', factor: 0.5 },
  torqueUnit: 'N·m',
  retorque: { after: 500, unit: 'h', note: 'cold' },
});

it.each(LANGUAGES)('comes back from the editor as it was kept, in %s', (language) => {
  const { content } = readJoint(formOf(CONTENT, language), language);
  const [stage] = content?.stages ?? [];
  expect({ ...content, stages: [] }).toEqual({ ...CONTENT, stages: [] });
  expect(stage?.torque?.lowerNm).toBe(36.1);
  expect({ ...stage, torque: undefined }).toEqual({ ...CONTENT.stages[0], torque: undefined });
});

it('shows a window as it was typed in the language it was typed in', () => {
  expect(formOf(CONTENT, 'de').stages[0]?.torque).toMatchObject({ target: '38,0', plusMinus: '1,9' });
});

it('exchanges the decimal sign of a window for a language that writes another one', () => {
  expect(formOf(CONTENT, 'en').stages[0]?.torque).toMatchObject({ target: '38.0', plusMinus: '1.9' });
});

it('comes back with staggered rows and places without a fastener', () => {
  const layout = { ...CONTENT.layout, edgeOnly: false, staggered: true, missing: [2, 18] };
  const staggered: JointContent = jointContentSchema.parse({ ...CONTENT, layout });
  expect(readJoint(formOf(staggered, 'de'), 'de').content?.layout).toEqual(layout);
});

it('comes back with free points and an own order', () => {
  const points: JointContent = jointContentSchema.parse({
    ...CONTENT,
    layout: {
      kind: 'points',
      points: [
        { xMm: -12.5, yMm: 0 },
        { xMm: 12.5, yMm: 40 },
      ],
    },
    stages: [{ ...CONTENT.stages[0], rounds: [{ share: 1, order: { method: 'own', positions: [2, 1] } }] }],
  });
  const { content } = readJoint(formOf(points, 'fr'), 'fr');
  expect(content?.layout).toEqual(points.layout);
  expect(content?.stages[0]?.rounds).toEqual(points.stages[0]?.rounds);
});
