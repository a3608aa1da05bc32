import { sayCare } from '../language/care/say.ts';
import { wrenchDeviations } from '../picture/wrench-deviations.ts';
import { convertTorque } from '../quantity/convert.ts';
import { showNumber } from '../quantity/show-number.ts';
import { showTorque } from '../quantity/show-quantity.ts';
import type { Contribution } from '../wrench/budget.ts';
import type { EvaluatedPoint } from '../wrench/evaluate-point.ts';
import type { CertificateHand, CertifiedRun } from './certificate-document.ts';
import type { Block, Column, Row, TableBlock } from './document.ts';

/** One run of a calibration: its points with every reading, their picture, the budget of the least sure one. */
export function runBlocks(runs: readonly CertifiedRun[], name: string, hand: CertificateHand): readonly Block[] {
  const { language } = hand;
  return runs.flatMap(({ direction, evaluated }): readonly Block[] => {
    const run = sayCare(language, 'certificate.run', {
      run: name,
      direction: sayCare(language, `certificate.${direction}`),
    });
    const pictures = wrenchDeviations(evaluated, { language, units: { torqueNm: hand.unit } });
    return [
      { kind: 'heading', level: 1, text: run },
      pointTable(run, evaluated.points, hand),
      ...pictures.map((picture) => ({ kind: 'plot', name: 'deviations', about: run, picture }) as const),
      budgetTable(run, evaluated.budget, evaluated.budgetAtNm, hand),
    ];
  });
}

const percent = (value: number, { language }: CertificateHand): string =>
  `${showNumber(value, language, { decimals: 2 })}\u00a0%`;

const row = (...texts: readonly string[]): Row => ({ cells: texts.map((text) => ({ text })), voice: 'plain' });

const right = (title: string): Column => ({ title, align: 'right' });
const left = (title: string): Column => ({ title, align: 'left' });

function pointTable(caption: string, points: readonly EvaluatedPoint[], hand: CertificateHand): TableBlock {
  const { language, unit } = hand;
  const title = (key: 'mean' | 'deviation' | 'greatest' | 'uncertainty' | 'interval') =>
    right(sayCare(language, `certificate.${key}`));
  return {
    kind: 'table',
    name: 'points',
    caption,
    columns: [
      left(sayCare(language, 'certificate.target')),
      left(sayCare(language, 'certificate.result')),
      title('mean'),
      title('deviation'),
      title('greatest'),
      title('uncertainty'),
      title('interval'),
      { title: sayCare(language, 'certificate.readings'), align: 'left', place: 'below' },
    ],
    groups: [
      {
        title: '',
        rows: points.map((point) =>
          row(
            showTorque(point.targetNm, unit, language),
            sayCare(language, point.conforms ? 'certificate.conforms' : 'certificate.not-conforms'),
            measured(point.meanReferenceNm, hand),
            percent(point.meanDeviationPercent, hand),
            percent(greatest(point.deviationsPercent), hand),
            percent(point.expandedUncertaintyPercent, hand),
            percent(point.uncertaintyIntervalPercent, hand),
            readings(point, hand),
          ),
        ),
      },
    ],
  };
}

/** To five digits: a reference resolves more than the wrench that is held against it. */
const measured = (torqueNm: number, { language, unit }: CertificateHand): string =>
  `${showNumber(Number(convertTorque(torqueNm, 'N·m', unit).toPrecision(5)), language)}\u00a0${unit}`;

const greatest = (deviations: readonly number[]): number =>
  deviations.reduce((most, one) => (Math.abs(one) > Math.abs(most) ? one : most), 0);

/** Each deviation, in the order of the repeats. */
const readings = ({ deviationsPercent }: EvaluatedPoint, hand: CertificateHand): string =>
  `${sayCare(hand.language, 'certificate.single')}: ${deviationsPercent.map((one) => percent(one, hand)).join('; ')}`;

function budgetTable(run: string, budget: readonly Contribution[], atNm: number, hand: CertificateHand): TableBlock {
  const { language, unit } = hand;
  const sum = Math.hypot(...budget.map(({ contribution }) => contribution));
  return {
    kind: 'table',
    name: 'budget',
    caption: sayCare(language, 'certificate.budget', { run, torque: showTorque(atNm, unit, language) }),
    columns: [
      left(sayCare(language, 'certificate.source')),
      right(sayCare(language, 'certificate.value')),
      left(sayCare(language, 'certificate.distribution')),
      right(sayCare(language, 'certificate.standard')),
      left(sayCare(language, 'certificate.how')),
    ],
    groups: [
      {
        title: '',
        rows: [
          ...budget.map((one) => contributionRow(one, hand)),
          row(sayCare(language, 'certificate.combined'), '', '', fine(sum, hand), ''),
        ],
      },
    ],
  };
}

/** One digit more than a deviation: small parts of a budget would read 0. */
const fine = (value: number, { language }: CertificateHand): string =>
  `${showNumber(value, language, { decimals: 3 })}\u00a0%`;

function contributionRow(one: Contribution, hand: CertificateHand): Row {
  const { language } = hand;
  const { source, kind, value, unit, distribution, contribution, assumed } = one;
  return row(
    sayCare(language, `budget.${source}`),
    `${showNumber(Number(value.toPrecision(4)), language)}\u00a0${unit}`,
    sayCare(language, `distribution.${distribution}`),
    fine(contribution, hand),
    sayCare(language, assumed ? 'certificate.assumed' : kind === 'A' ? 'certificate.repeats' : 'certificate.measured'),
  );
}
