import { z } from 'zod';
import { invalid, ok, type Result } from '../../failure/failure.ts';
import { type Remark, remark } from '../../language/mechanics/remark.ts';
import { interactionOf } from '../interaction/from-interaction.ts';
import { neighbourCompliance } from '../interaction/model.ts';
import { roundOrders, roundTargets, targetsSchema } from '../interaction/rounds-request.ts';
import { type Round, simulate } from '../interaction/simulate.ts';
import { asCompliance, rowsOf } from '../interaction/square-matrix.ts';
import { MOST_POSITIONS } from '../layout.ts';
import { fitTwo, type TwoFitted } from './fit-two.ts';

const positive = (what: string) => z.number().positive().max(1e9).describe(what);

/** What is asked for when the answer of neighbours is learned from measurements. */
export const interactionFitRequestSchema = z.strictObject({
  arrangement: z.enum(['circle', 'line']).describe('how the bolts follow each other'),
  count: z.number().int().min(2).max(MOST_POSITIONS).describe('bolts, 2 to 200'),
  order: z
    .array(z.number().int().min(1).max(MOST_POSITIONS))
    .min(1)
    .max(MOST_POSITIONS)
    .describe('positions from 1 in the order of the pulls, each once'),
  targetsN: targetsSchema.describe(
    'for each round the force that each pull brought its bolt to, N: one figure, or one for each pull in order',
  ),
  measured: z
    .array(
      z.strictObject({
        afterPull: z.number().int().min(1).max(10_000).describe('after how many pulls it was measured'),
        position: z.number().int().min(1).max(MOST_POSITIONS).describe('which bolt'),
        forceN: z.number().min(0).max(1e9).describe('force by a load cell, N').optional(),
        elongationMm: z.number().min(0).max(100).describe('stretch of the bolt, mm; wants boltNPerMm').optional(),
        torqueNm: z.number().min(0).max(1e6).describe('re-check torque, N·m; wants nutFactor and d').optional(),
      }),
    )
    .min(1)
    .max(10_000)
    .describe('what was measured, one of the three in each row'),
  boltNPerMm: positive('stiffness of one bolt over its measured length, N/mm').optional(),
  nutFactor: z.number().gt(0).max(5).describe('K of T = K·d·F when a tight bolt is checked').optional(),
  majorDiameterMm: z.number().positive().max(1000).describe('d, mm').optional(),
});
export type InteractionFitRequest = z.infer<typeof interactionFitRequestSchema>;

export interface FittedRow {
  readonly afterPull: number;
  readonly position: number;
  readonly measuredN: number;
  readonly fittedN: number;
}

export interface InteractionFit {
  readonly neighbour: number;
  readonly decay: number;
  readonly neighbourUncertainty?: number;
  readonly decayUncertainty?: number;
  readonly correlation: number;
  readonly degreesOfFreedom: number;
  readonly residualN: number;
  readonly fitted: readonly FittedRow[];
  readonly interaction: readonly (readonly number[])[];
  readonly assumptions: readonly Remark[];
}

interface Observed {
  /** Step and bolt from 0. */
  readonly step: number;
  readonly bolt: number;
  readonly forceN: number;
}

/**
 * Two figures, how much a neighbour takes part and how that fades from neighbour to neighbour, by least squares over
 * what was measured while the joint was tightened. Refused with the row that cannot be.
 */
export function interactionFit(request: InteractionFitRequest): Result<InteractionFit> {
  const { count } = request;
  const orders = roundOrders(request.order, request.targetsN.length, count, 'model');
  if (!orders.ok) return orders;
  const targets = roundTargets(request.targetsN, count);
  if (!targets.ok) return targets;
  const observed = observedFrom(request);
  if (!observed.ok) return observed;
  const rounds = orders.value.map((bolts, index) => ({ bolts, targetsN: targets.value[index]! }));
  const fit = fitTwo(
    forcesBy(request, rounds, observed.value),
    observed.value.map(({ forceN }) => forceN),
  );
  return fit ? ok(summedUp(request, observed.value, fit)) : untold();
}

const untold = () =>
  invalid(
    'measured',
    'These measurements do not tell how far neighbours reach.',
    'more of them, of bolts that were tight while neighbours and those beyond were pulled',
  );

type Forces = (neighbour: number, decay: number) => Float64Array | undefined;

/** Forces where they were measured, by the two figures; undefined where no joint behaves so. */
function forcesBy(
  { arrangement, count }: InteractionFitRequest,
  rounds: readonly Round[],
  observed: readonly Observed[],
): Forces {
  const bySteps = new Map<number, { readonly index: number; readonly bolt: number }[]>();
  for (const [index, { step, bolt }] of observed.entries()) {
    bySteps.set(step, [...(bySteps.get(step) ?? []), { index, bolt }]);
  }
  return (neighbour, decay) => {
    const read = asCompliance(neighbourCompliance({ arrangement, count, neighbour, decay }), 'neighbour');
    if (!read.ok) return undefined;
    const first = read.value;
    const forces = new Float64Array(observed.length);
    simulate({ first }, rounds, undefined, (forcesN, step) => {
      for (const { index, bolt } of bySteps.get(step) ?? []) forces[index] = forcesN[bolt]!;
    });
    return forces;
  };
}

function observedFrom(request: InteractionFitRequest): Result<readonly Observed[]> {
  const pulls = request.count * request.targetsN.length;
  const observed: Observed[] = [];
  for (const [row, { afterPull, position, ...told }] of request.measured.entries()) {
    const at = (name: string) => `measured[${row}].${name}`;
    if (afterPull > pulls) return invalid(at('afterPull'), `There are ${pulls} pulls.`, `1 to ${pulls}`);
    if (position > request.count) {
      return invalid(at('position'), `There is no position ${position}.`, `1 to ${request.count}`);
    }
    const force = forceFrom(request, told, row);
    if (!force.ok) return force;
    observed.push({ step: afterPull - 1, bolt: position - 1, forceN: force.value });
  }
  if (observed.length >= 2) return ok(observed);
  return invalid('measured', 'One measurement cannot tell two figures.', 'at least 2 rows, better a dozen');
}

type Told = Omit<InteractionFitRequest['measured'][number], 'afterPull' | 'position'>;

function forceFrom(request: InteractionFitRequest, told: Told, row: number): Result<number> {
  const { forceN, elongationMm, torqueNm } = told;
  if ([forceN, elongationMm, torqueNm].filter((one) => one !== undefined).length !== 1) {
    return invalid(`measured[${row}]`, 'A row tells one thing.', 'forceN, elongationMm or torqueNm, one of them');
  }
  if (forceN !== undefined) return ok(forceN);
  if (elongationMm !== undefined) {
    const { boltNPerMm } = request;
    if (boltNPerMm !== undefined) return ok(elongationMm * boltNPerMm);
    return invalid(
      'boltNPerMm',
      'A stretch is measured, and the stiffness of the bolt is missing.',
      'a stiffness, N/mm',
    );
  }
  const { nutFactor, majorDiameterMm } = request;
  if (nutFactor === undefined)
    return invalid('nutFactor', 'A torque is measured, and K is missing.', '0.1 to 0.3 is usual');
  if (majorDiameterMm === undefined)
    return invalid('majorDiameterMm', 'A torque is measured, and d is missing.', 'a diameter, mm');
  return ok((1000 * (torqueNm ?? 0)) / (nutFactor * majorDiameterMm));
}

function summedUp(request: InteractionFitRequest, observed: readonly Observed[], fit: TwoFitted): InteractionFit {
  const [neighbour, decay] = fit.values;
  const { uncertainties } = fit;
  return {
    neighbour,
    decay,
    ...(uncertainties ? { neighbourUncertainty: uncertainties[0], decayUncertainty: uncertainties[1] } : {}),
    correlation: fit.correlation,
    degreesOfFreedom: observed.length - 2,
    residualN: fit.residual,
    fitted: observed.map(({ step, bolt, forceN }, index) => ({
      afterPull: step + 1,
      position: bolt + 1,
      measuredN: forceN,
      fittedN: fit.fitted[index]!,
    })),
    interaction: rowsOf(interactionOf(neighbourCompliance({ ...request, neighbour, decay }))),
    assumptions: [remark('neighbours-fade'), remark('alike-by-chance')],
  };
}
