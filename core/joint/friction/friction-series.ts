import { invalid, ok, type Result } from '../../failure/failure.ts';
import { remark } from '../../language/mechanics/remark.ts';
import { type Description, describe } from '../../statistics/describe.ts';
import { type StepShown, shown } from '../step-shown.ts';
import { meanBearingDiameterMm, type ThreadAndBearing } from '../torque/thread-and-bearing.ts';
import { type TightenedInput, tightened } from '../torque/tightened.ts';
import type { Warning } from '../warning.ts';
import { type FrictionFound, frictionOfTest, type TorqueTensionTest } from './friction-of-test.ts';

export interface FrictionInput extends TightenedInput {
  readonly torqueNm?: number | undefined;
  readonly threadTorqueNm?: number | undefined;
  readonly preloadN?: number | undefined;
  /** A whole series, instead of one test. */
  readonly tests?: readonly TorqueTensionTest[] | undefined;
}

/** One quantity over the series. */
export interface SeriesStatistics extends Description {
  readonly quantity: 'total' | 'thread' | 'bearing' | 'nutFactor';
  /** Standard deviation over mean. */
  readonly coefficientOfVariation?: number;
}

export interface Friction extends FrictionFound {
  /** Each test of a series; empty for a single test. */
  readonly found: readonly FrictionFound[];
  readonly statistics: readonly SeriesStatistics[];
  readonly bearingOuterMm: number;
  readonly holeMm: number;
  readonly warnings: readonly Warning[];
  readonly steps: readonly StepShown[];
}

const QUANTITIES = ['total', 'thread', 'bearing', 'nutFactor'] as const;

/**
 * Friction of one test, or of a series with its statistics; for a series the figures are its means.
 *
 * @source ISO 16047:2005
 */
export function friction(input: FrictionInput): Result<Friction> {
  const fastener = tightened(input);
  if (!fastener.ok) return fastener;
  const { geometry } = fastener.value;
  const tests = testsOf(input);
  if (!tests.ok) return tests;
  const found: FrictionFound[] = [];
  for (const [index, test] of tests.value.entries()) {
    const one = frictionOfTest(test, geometry, input.tests === undefined ? '' : `tests[${index}].`);
    if (!one.ok) return one;
    found.push(one.value);
  }
  const statistics = QUANTITIES.flatMap((quantity) => statisticsOf(quantity, found));
  const isSeries = input.tests !== undefined;
  return ok({
    ...meansOf(statistics),
    found: isSeries ? found : [],
    statistics: isSeries ? statistics : [],
    bearingOuterMm: geometry.bearingOuterMm,
    holeMm: geometry.holeMm,
    warnings: isSeries ? seriesDoubts(found) : [],
    steps: isSeries ? [] : stepsOf(tests.value, found, geometry),
  });
}

function testsOf({ torqueNm, threadTorqueNm, preloadN, tests }: FrictionInput): Result<readonly TorqueTensionTest[]> {
  const isSingleTold = torqueNm !== undefined || threadTorqueNm !== undefined || preloadN !== undefined;
  if (tests !== undefined) {
    return isSingleTold ? invalid('tests', 'A series and a single test are both told.', 'either of them') : ok(tests);
  }
  if (torqueNm === undefined)
    return invalid('torqueNm', 'It is missing.', 'tightening torque, N·m, or a series of tests');
  if (preloadN === undefined) return invalid('preloadN', 'It is missing.', 'preload measured, N, or a series of tests');
  return ok([{ torqueNm, threadTorqueNm, preloadN }]);
}

/** Thread and bearing are told only when every test of the series tells them. */
function statisticsOf(
  quantity: SeriesStatistics['quantity'],
  found: readonly FrictionFound[],
): readonly SeriesStatistics[] {
  const values = found.flatMap((one) => one[quantity] ?? []);
  if (values.length < found.length) return [];
  const description = describe(values);
  const { standardDeviation, mean } = description;
  const variation = standardDeviation === undefined ? {} : { coefficientOfVariation: standardDeviation / mean };
  return [{ quantity, ...description, ...variation }];
}

function meansOf(statistics: readonly SeriesStatistics[]): FrictionFound {
  const mean = (quantity: SeriesStatistics['quantity']) => statistics.find((one) => one.quantity === quantity)?.mean;
  const thread = mean('thread');
  const bearing = mean('bearing');
  return {
    total: mean('total') ?? Number.NaN,
    ...(thread === undefined ? {} : { thread }),
    ...(bearing === undefined ? {} : { bearing }),
    nutFactor: mean('nutFactor') ?? Number.NaN,
  };
}

/** Fewer say little of the scatter (ISO 16047 leaves the number to agreement; ten is common practice). */
const FEW_TESTS = 10;

function seriesDoubts(found: readonly FrictionFound[]): readonly Warning[] {
  const isMixed = new Set(found.map(({ thread }) => thread === undefined)).size > 1;
  return [
    ...(found.length < FEW_TESTS ? [{ field: 'tests', ...remark('few-tests', { count: found.length }) }] : []),
    ...(isMixed ? [{ field: 'tests', ...remark('mixed-tests') }] : []),
  ];
}

function stepsOf(
  [test]: readonly TorqueTensionTest[],
  [found]: readonly FrictionFound[],
  geometry: ThreadAndBearing,
): readonly StepShown[] {
  if (!test || !found) return [];
  const source = 'ISO 16047:2005';
  const numbers = {
    T: test.torqueNm,
    T_th: test.threadTorqueNm ?? Number.NaN,
    F: test.preloadN,
    P: geometry.pitchMm,
    d_2: geometry.pitchDiameterMm,
    d: geometry.majorDiameterMm,
    D_b: meanBearingDiameterMm(geometry),
  };
  const step = (symbol: string, formula: string, value: number): StepShown =>
    shown({ symbol, formula, numbers, value, unit: '', source });
  return [
    step('μ_tot', '(1000·T/F − P/(2·π))/(0.577·d_2 + D_b/2)', found.total),
    ...(found.thread === undefined ? [] : [step('μ_th', '(1000·T_th/F − P/(2·π))/(0.577·d_2)', found.thread)]),
    ...(found.bearing === undefined ? [] : [step('μ_b', '2·1000·(T − T_th)/(D_b·F)', found.bearing)]),
    step('K', '1000·T/(F·d)', found.nutFactor),
  ];
}
