import { jointContentSchema, type Neighbours } from '@clampwright/core/joint';
import { describe, expect, it } from 'vitest';
import { readerIn } from '../../forms/reader.ts';
import { BLANK_JOINT, blankStage } from '../form/blank.ts';
import { formOf } from '../form/from-content.ts';
import type { JointForm } from '../form/joint-form.ts';
import { readJoint } from '../form/read.ts';
import { withPlan } from './fill-plan.ts';
import { BLANK_PLAN, type PlanForm, readClosing, readPlan, usualForceKN } from './plan-form.ts';
import { playStar, playWanted } from './play-plan.ts';

const FIGURES = {
  outerMm: '285',
  innerMm: '165',
  heightMm: '20',
  gasketOuterMm: '210',
  gasketInnerMm: '170',
  gasketThicknessMm: '2',
  gasketMPa: '400',
  boltNPerMm: '600000',
  modulusMPa: '200000',
};

const FLANGE: JointForm = {
  ...BLANK_JOINT,
  name: 'Flange',
  fastener: { ...BLANK_JOINT.fastener, thread: 'M16', propertyClass: '8.8' },
  layout: { ...BLANK_JOINT.layout, diameter: '240' },
  stages: [
    {
      ...blankStage(1, 'torque', 'N·m'),
      torque: { form: 'percent', target: '140', percent: '5', plusMinus: '', lower: '', upper: '', unit: 'N·m' },
    },
  ],
  numbersSource: { kind: 'maker', text: 'Sheet 4', derivation: undefined },
  neighbours: { ...BLANK_JOINT.neighbours, isUsed: true, figures: FIGURES, note: 'sheet 4' },
};
const PLAN: PlanForm = { ...BLANK_PLAN, stage: 1, own: [], finalKN: '44', rounds: '1', closingRounds: '1' };

const MEASURED: Neighbours = {
  how: 'measured',
  note: 'load cells',
  interaction: Array.from({ length: 8 }, (_, i) => Array.from({ length: 8 }, (_column, j) => (i === j ? 1 : 0))),
};

function wantedOf(plan: PlanForm, form: JointForm = FLANGE) {
  const { layout, neighbours, faults } = readJoint(form, 'en');
  if (!layout || !neighbours) throw new Error(JSON.stringify(faults));
  const reader = readerIn('en');
  const wanted = readPlan(plan, { layout, neighbours }, reader);
  const closing = readClosing(plan, reader);
  return { wanted, closing, faults: reader.faults.map(({ field }) => field) };
}

function filled(plan: PlanForm = PLAN) {
  const { wanted, closing } = wantedOf(plan);
  const planned = wanted && playWanted(wanted);
  const compared = wanted && playStar(wanted);
  if (!wanted || !closing || !planned?.ok || !compared?.ok) throw new Error('the plan can be made');
  const form = withPlan(FLANGE, { stage: 1, wanted, planned: planned.value, compared: compared.value, closing }, 'en');
  return { form, planned: planned.value, compared: compared.value };
}

describe('a plan of rounds', () => {
  it('ends even in one round, where three star rounds do not', () => {
    const { planned, compared } = filled();
    expect(planned.figures.spread).toBeLessThan(0.001);
    expect(compared.figures.spread).toBeGreaterThan(10 * planned.figures.spread);
    expect([planned.figures.pulls, compared.figures.pulls]).toEqual([8, 24]);
    expect(planned.steps).toHaveLength(8);
    expect(planned.steps.at(-1)?.forcesN).toEqual(planned.finalN);
  });

  it('becomes the rounds of its stage, with targets by position and a closing round, free of contradictions', () => {
    const { form, planned } = filled();
    const { content, faults } = readJoint(form, 'en');
    expect(faults).toEqual([]);
    const kept = jointContentSchema.parse(content);
    const [first, closing] = kept.stages[0]?.rounds ?? [];
    expect(first?.positionShares).toEqual(planned.rounds[0]?.shares);
    expect(closing).toMatchObject({ order: { method: 'circular' }, closing: { stillDeg: 3 } });
    expect(kept.neighbours).toMatchObject({ how: 'dimensions', note: 'sheet 4', plan: { stage: 1, finalN: 44_000 } });
  });

  it.each(['en', 'de', 'fr'] as const)('comes back from the editor as it was kept, in %s', (language) => {
    const content = jointContentSchema.parse(readJoint(filled().form, 'en').content);
    const back = readJoint(formOf(content, language), language).content;
    expect(back?.neighbours).toEqual(content.neighbours);
    expect(back?.stages[0]?.rounds).toEqual(content.stages[0]?.rounds);
  });

  it.each([2, 3, 4])('ends even in one round with %i wrenches at once, group by group', (wrenches) => {
    const { wanted } = wantedOf({ ...PLAN, wrenches });
    const mine = wanted && playWanted(wanted);
    if (!mine?.ok) throw new Error('not planned');
    expect(mine.value.figures.spread).toBeLessThan(0.001);
    expect(mine.value.steps).toHaveLength(Math.ceil(8 / wrenches));
    expect(mine.value.steps[0]?.positions).toHaveLength(wrenches);
  });

  it('takes several wrenches in groups with the same target for all, where that is wanted', () => {
    const { wanted } = wantedOf({ ...PLAN, wrenches: 2, targets: 'shares', shares: '50 100' });
    const played = wanted && playWanted(wanted);
    expect(played?.ok && played.value.steps.map(({ positions }) => positions.length)).toEqual(Array(8).fill(2));
    expect(played?.ok && new Set(played.value.rounds[1]?.shares)).toEqual(new Set([1]));
  });

  it('is refused in the words of the core where the ceiling cannot be held', () => {
    const { wanted } = wantedOf({ ...PLAN, ceilingPercent: '90' });
    expect(wanted && playWanted(wanted)).toMatchObject({ ok: false });
  });

  it('has no pull below what seats the joint, or is refused', () => {
    const lowest = (seatingPercent: string, rounds: string) => {
      const { wanted } = wantedOf({ ...PLAN, rounds, seatingPercent });
      const plan = wanted && playWanted(wanted);
      return plan?.ok ? Math.min(...plan.value.rounds.flatMap(({ shares }) => shares)) : plan?.failure;
    };
    const free = Number(lowest('', '3'));
    expect(lowest(String(100 * free + 2), '3')).toBeGreaterThanOrEqual(free + 0.0199);
    expect(lowest('99', '1')).toMatchObject({ field: 'seatingN' });
  });

  it.each([1, 2, 200])('is made for %i bolts or refused, while their number is typed', (count) => {
    const { wanted } = wantedOf(PLAN, { ...FLANGE, layout: { ...FLANGE.layout, count: String(count) } });
    const told = (plan: ReturnType<typeof playWanted>) =>
      plan.ok ? plan.value.finalN.length : plan.failure.kind === 'invalid' && plan.failure.field;
    const plans = wanted ? [playWanted(wanted), playStar(wanted)] : [];
    expect(plans.map(told)).toEqual(count === 1 ? ['count', 'count'] : [count, count]);
  });

  it.each([
    [{ finalKN: '' }, ['plan.finalKN']],
    [{ rounds: '0' }, ['plan.rounds']],
    [{ seatingPercent: '101' }, ['plan.seatingPercent']],
    [{ targets: 'shares', shares: '70 30' }, ['plan.shares']],
    [{ method: 'own', own: [1, 2] }, ['plan.order']],
    [{ stillDeg: 'a' }, ['plan.stillDeg']],
  ] as const)('tells at the field what cannot be: %j', (part, fields) => {
    expect(wantedOf({ ...PLAN, ...part }).faults).toEqual(fields);
  });

  // A stiff ring on eight even springs: its second moment is n r²/2 about any axis, so it tilts by 2 M / (k n r²).
  it('tells the gap that the largest imbalance opens on the gasket', () => {
    const { wanted } = wantedOf(PLAN);
    const star = wanted && playStar(wanted);
    if (!star?.ok) throw new Error('not played');
    const { momentNm, gapMm } = star.value.figures;
    const bedNPerMm = (400 * (Math.PI / 4) * (210 ** 2 - 170 ** 2)) / 2 / 8;
    const acrossMm = (240 * (2 * momentNm * 1000)) / (bedNPerMm * 8 * 120 ** 2);
    expect(gapMm).toBeLessThanOrEqual(acrossMm * (1 + 1e-9));
    expect(gapMm).toBeGreaterThanOrEqual(acrossMm * Math.cos(Math.PI / 8) * (1 - 1e-9));
  });

  it('tells the gap of a cover as its plate bends, and of coefficients why there is none', () => {
    const cover: JointForm = {
      ...FLANGE,
      neighbours: {
        ...FLANGE.neighbours,
        kind: 'plate',
        figures: { heightMm: '20', edgeMm: '30', modulusMPa: '200000', bedNPerMm3: '10', boltNPerMm: '600000' },
      },
    };
    const { wanted } = wantedOf(PLAN, cover);
    const bent = wanted && playWanted(wanted);
    expect(bent?.ok && bent.value.figures.gapMm).toBeGreaterThan(0);
    const measured = wanted && { ...wanted, neighbours: MEASURED };
    const played = measured && playWanted(measured);
    expect(played?.ok && played.value.figures).toMatchObject({ whyNoGap: 'up-to-scale' });
    expect(played?.ok && played.value.figures).not.toHaveProperty('gapMm');
  });

  it('begins with the force of K = 0.2', () => {
    expect(usualForceKN(140, { thread: 'M16x1.5' })).toBeCloseTo(43.75, 10);
    expect(usualForceKN(140, { thread: '3/8-16 UNC' })).toBeUndefined();
  });
});

describe('neighbours being written', () => {
  const withNeighbours = (part: Partial<JointForm['neighbours']>): JointForm => ({
    ...FLANGE,
    neighbours: { ...FLANGE.neighbours, ...part },
  });
  const fieldsOf = (form: JointForm) => readJoint(form, 'en').faults.map(({ field }) => field);
  const measured = { ...FLANGE.neighbours.measured, order: '1 5 3 7 2 6 4 8', roundsKN: '40' };

  it('are left out of the joint while they are not used', () => {
    expect(readJoint(withNeighbours({ isUsed: false }), 'en').content).not.toHaveProperty('neighbours');
  });

  it('tell the figure that is missing, and the one that cannot be', () => {
    expect(fieldsOf(withNeighbours({ figures: { ...FIGURES, outerMm: '' } }))).toEqual(['neighbours.model.outerMm']);
    expect(fieldsOf(withNeighbours({ figures: { ...FIGURES, innerMm: '300' } }))).toEqual(['neighbours.model.innerMm']);
  });

  it('keep what the editor may leave out: how hub and pipe hold the flange, and how it bulges', () => {
    const held = withNeighbours({ figures: { ...FIGURES, hubN: '5000', poisson: '0.28' } });
    expect(readJoint(held, 'en').neighbours?.model).toMatchObject({ hubN: 5000, poisson: 0.28 });
    expect(readJoint(FLANGE, 'en').neighbours?.model).toMatchObject({ hubN: 0, poisson: 0.3 });
    const content = jointContentSchema.parse(
      readJoint({ ...filled().form, neighbours: held.neighbours }, 'en').content,
    );
    expect(readJoint(formOf(content, 'de'), 'de').content?.neighbours).toEqual(content.neighbours);
  });

  it('take a pasted matrix, and refuse one of another size', () => {
    const matrix = Array.from({ length: 8 }, (_, i) =>
      Array.from({ length: 8 }, (_column, j) => (i === j ? '1' : '0')).join('\t'),
    );
    const read = readJoint(withNeighbours({ kind: 'interaction', matrix: matrix.join('\n') }), 'en');
    expect(read.faults).toEqual([]);
    expect(read.neighbours?.interaction?.[7]?.[7]).toBe(1);
    expect(fieldsOf(withNeighbours({ kind: 'interaction', matrix: '1 0\n0 1' }))).toEqual(['neighbours.interaction']);
    expect(fieldsOf(withNeighbours({ kind: 'interaction', matrix: '1 x\n0 1' }))).toEqual(['neighbours.interaction']);
  });

  it('are learned from measurements, and refused where a line has not three figures', () => {
    const rows = ['2 1 39', '3 1 36', '5 1 31', '6 5 30', '8 1 29', '8 5 28', '8 3 27', '8 8 40'].join('\n');
    const { neighbours } = readJoint(withNeighbours({ kind: 'learned', measured: { ...measured, rows } }), 'en');
    expect(neighbours).toMatchObject({ how: 'learned', model: { kind: 'neighbours', count: 8 }, fit: { rows: 8 } });
    expect(fieldsOf(withNeighbours({ kind: 'learned', measured: { ...measured, rows: '2 1' } }))).toEqual([
      'neighbours.measured',
    ]);
  });
});
