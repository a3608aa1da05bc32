import type { CalculationName } from '@clampwright/core/calculations';
import { HALF_WIDTH } from '@clampwright/core/statistics';
import type { Brought, DerivationBegun, StageBrought } from '../joints/brought/brought.ts';
import { isRecord } from './is-record.ts';

type Fields = Readonly<Record<string, unknown>>;
type Taken = { readonly derive: Partial<DerivationBegun> } | { readonly stage: StageBrought };

/** What of a calculation belongs into a joint: what its editor derives a target from, or the figures of a stage. */
const INTO_JOINT: Partial<Record<CalculationName, (input: Fields, output: Fields) => Taken | undefined>> = {
  'assembly-torque': (input) => ({
    derive: { ...frictions(input), utilization: figure(input['utilization']) },
  }),
  'joint-check': (input, output) => {
    const torque = figure(input['torqueNm']);
    if (torque !== undefined) return { stage: { kind: 'torque', torque: { target: torque } } };
    const { tighteningMethod } = input;
    return {
      derive: {
        ...frictions(input),
        utilization: usedAtAssembly(input, output),
        tighteningFactor: figure(output['tighteningFactor']),
        ...(typeof tighteningMethod === 'string' ? { tighteningMethod } : {}),
      },
    };
  },
  preload: ({ torqueNm }) => {
    const target = figure(torqueNm);
    return target === undefined
      ? undefined
      : { stage: { kind: 'torque', torque: { target, percent: halfWidthPercent(torqueNm) } } };
  },
  'tightening-angle': (_, output) => {
    const angle = { target: rounded(figure(output['angleDeg'])) };
    const angleFromNm = rounded(figure(output['snugTorqueNm']));
    const torque = endTorque(output);
    const kind = torque === undefined ? 'angle' : 'torque-and-angle';
    return { stage: { kind, angle, angleFromNm, torque } };
  },
};

/** What is taken along; undefined where a calculation has nothing for a joint, or no thread was told. */
export function broughtFrom(name: CalculationName, input: Fields, output: unknown): Brought | undefined {
  const thread = designationIn(input['thread']);
  const taken = thread !== '' && isRecord(output) ? INTO_JOINT[name]?.(input, output) : undefined;
  if (taken === undefined) return undefined;
  const { propertyClass } = input;
  return { thread, ...(typeof propertyClass === 'string' ? { propertyClass } : {}), ...taken };
}

/** Of an own bolt its designation, by which it is found again among the workshop's rows. */
function designationIn(thread: unknown): string {
  const designation = isRecord(thread) ? thread['designation'] : thread;
  return typeof designation === 'string' ? designation : '';
}

const frictions = ({ threadFriction, bearingFriction }: Fields) => ({
  threadFriction: figure(threadFriction),
  bearingFriction: figure(bearingFriction),
});

/** A figure, told plainly or with its uncertainty. */
function figure(told: unknown): number | undefined {
  const value = isRecord(told) ? told['value'] : told;
  return typeof value === 'number' && value > 0 ? value : undefined;
}

/** Four digits: a figure that was worked out is no surer. */
const rounded = (value: number | undefined): number | undefined =>
  value === undefined ? undefined : Number(value.toPrecision(4));

/** Of a distribution without ends: holds 95 % (JCGM 100:2008, 6.3.3). */
const COVERAGE = 2;

/** What a torque that is told with its uncertainty may be off. */
function halfWidthPercent(told: unknown): number | undefined {
  if (!isRecord(told)) return undefined;
  const value = figure(told);
  const standard = figure(told['standardUncertainty']);
  if (value === undefined || standard === undefined) return undefined;
  const { distribution } = told;
  const hasEnds = distribution === 'rectangular' || distribution === 'triangular';
  const half = (hasEnds ? HALF_WIDTH[distribution] : COVERAGE) * standard;
  return Number(((100 * half) / value).toPrecision(3));
}

/** Share of the yield strength that the greatest preload at assembly reaches. */
function usedAtAssembly({ utilization }: Fields, { margins }: Fields): number | undefined {
  const found: unknown = Array.isArray(margins)
    ? margins.find((margin: unknown) => isRecord(margin) && margin['check'] === 'yield-at-assembly')
    : undefined;
  const ratio = isRecord(found) ? figure(found['ratio']) : undefined;
  if (ratio === undefined) return undefined;
  const used = (figure(utilization) ?? USUAL_UTILIZATION) / ratio;
  return used > 1 ? undefined : used;
}

/** What `joint-check` counts with when it is not told. */
const USUAL_UTILIZATION = 0.9;

/** The torque to expect at the end of the turn, with its window over the credible frictions. */
function endTorque({ finalTorqueNm, torqueWindow }: Fields): StageBrought['torque'] {
  const target = rounded(figure(finalTorqueNm));
  if (target === undefined || !isRecord(torqueWindow)) return undefined;
  const lower = rounded(figure(torqueWindow['lowNm']));
  const upper = rounded(figure(torqueWindow['highNm']));
  return lower === undefined || upper === undefined ? undefined : { target, lower, upper };
}
