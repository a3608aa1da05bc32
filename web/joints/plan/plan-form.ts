import type { FastenerSpec, Neighbours } from '@clampwright/core/joint';
import { countPlaces, type Layout, ORDER_METHODS } from '@clampwright/core/layout';
import { figuresIn } from '../../forms/read-rows.ts';
import type { Reader } from '../../forms/reader.ts';
import { whole } from '../../forms/whole.ts';

/** How the order of a plan is found. */
export const PLAN_METHODS = [...ORDER_METHODS, 'from-the-stiffest', 'own', 'searched'] as const;
export type PlanMethod = (typeof PLAN_METHODS)[number];

/** `planned`: targets that end even; `shares`: the same share for every bolt of a round. */
export const TARGET_KINDS = ['planned', 'shares'] as const;

/** Choices of a plan while it is made; figures are the texts in their fields. */
export interface PlanForm {
  readonly stage: number;
  readonly finalKN: string;
  readonly method: PlanMethod;
  /** Of the stage's own rounds, or found by a search. */
  readonly own: readonly number[];
  readonly searched: readonly number[];
  readonly wrenches: number;
  readonly targets: (typeof TARGET_KINDS)[number];
  readonly rounds: string;
  readonly shares: string;
  /** No pull higher than this share of the whole torque; empty: no ceiling. */
  readonly ceilingPercent: string;
  /** No pull lower than this share, so that each of them seats; empty: however low. */
  readonly seatingPercent: string;
  readonly scatterPercent: string;
  readonly secondsPerPull: string;
  readonly closingRounds: string;
  readonly stillDeg: string;
}

export interface PlanWanted {
  readonly layout: Layout;
  readonly neighbours: Neighbours;
  readonly finalN: number;
  readonly method: PlanMethod;
  readonly positions: readonly number[];
  readonly wrenches: number;
  readonly targets: PlanForm['targets'];
  readonly rounds: number;
  readonly shares: readonly number[];
  readonly ceilingN: number | undefined;
  readonly seatingN: number | undefined;
  readonly frictionScatter: number | undefined;
  readonly secondsPerPull: number;
}

/** Where a closing round is wanted: how often at most, and what counts as still. */
export interface ClosingWanted {
  readonly rounds: number;
  readonly stillDeg: number;
}

export const BLANK_PLAN: Omit<PlanForm, 'stage' | 'own'> = {
  finalKN: '',
  method: 'star',
  searched: [],
  wrenches: 1,
  targets: 'planned',
  rounds: '2',
  shares: '30 70 100',
  ceilingPercent: '',
  seatingPercent: '',
  scatterPercent: '',
  secondsPerPull: '20',
  closingRounds: '2',
  stillDeg: '3',
};

/** On a circle there is no middle and no stiffest part. */
export const methodsIn = (layout: Layout): readonly PlanMethod[] =>
  PLAN_METHODS.filter((method) => layout.kind !== 'circle' || !method.startsWith('from-the'));

/** What the choices say; undefined while one of them cannot be read. */
export function readPlan(
  form: PlanForm,
  { layout, neighbours }: { readonly layout: Layout; readonly neighbours: Neighbours },
  reader: Reader,
): PlanWanted | undefined {
  const { targets } = form;
  const isPlanned = targets === 'planned';
  const finalKN = reader.number('plan.finalKN', form.finalKN, { isPositive: true, to: 1e6 });
  const optional = (field: string, text: string, to: number) =>
    text.trim() === '' ? null : reader.number(field, text, { isPositive: true, to });
  const ceiling = optional('plan.ceilingPercent', isPlanned ? form.ceilingPercent : '', 300);
  const seating = optional('plan.seatingPercent', isPlanned ? form.seatingPercent : '', 100);
  const scatter = optional('plan.scatterPercent', isPlanned ? form.scatterPercent : '', 100);
  const read = whole({
    finalKN,
    ceiling,
    seating,
    scatter,
    rounds: isPlanned ? reader.number('plan.rounds', form.rounds, { isWhole: true, from: 1, to: 10 }) : 1,
    shares: isPlanned ? [] : readShares(form.shares, reader),
    positions: positionsOf(form, layout, reader),
    secondsPerPull: reader.number('plan.secondsPerPull', form.secondsPerPull, { isPositive: true, to: 3600 }),
  });
  if (!read) return undefined;
  const { shares, positions, rounds, secondsPerPull } = read;
  const finalN = read.finalKN * 1000;
  return {
    layout,
    neighbours,
    finalN,
    method: methodsIn(layout).includes(form.method) ? form.method : 'star',
    positions,
    wrenches: form.wrenches,
    targets,
    rounds: isPlanned ? rounds : shares.length,
    shares,
    ceilingN: read.ceiling === null ? undefined : (read.ceiling / 100) * finalN,
    seatingN: read.seating === null ? undefined : (read.seating / 100) * finalN,
    frictionScatter: read.scatter === null ? undefined : read.scatter / 100,
    secondsPerPull,
  };
}

function positionsOf(form: PlanForm, layout: Layout, reader: Reader): readonly number[] | undefined {
  if (form.method !== 'own' && form.method !== 'searched') return [];
  const positions = form.method === 'own' ? form.own : form.searched;
  const count = countPlaces(layout);
  if (new Set(positions).size === count && positions.length === count) return positions;
  return reader.fault('plan.order', { kind: 'mend', word: 'order-of-another' });
}

/** Shares rise, and the last round brings the whole. */
function readShares(text: string, reader: Reader): readonly number[] | undefined {
  const shares = figuresIn(text.replaceAll('%', ' '), 'plan.shares', reader);
  if (!shares) return undefined;
  const rises = shares.every((share, index) => share > 0 && share <= 100 && share >= (shares[index - 1] ?? 0));
  if (rises && shares.at(-1) === 100 && shares.length <= 10) return shares.map((share) => share / 100);
  return reader.fault('plan.shares', { kind: 'mend', word: 'shares-rise' });
}

export function readClosing(form: PlanForm, reader: Reader): ClosingWanted | undefined {
  const rounds = reader.number('plan.closingRounds', form.closingRounds, { isWhole: true, from: 0, to: 5 });
  const stillDeg = reader.number('plan.stillDeg', form.stillDeg, { isPositive: true, to: 90 });
  return whole({ rounds, stillDeg });
}

/** Nut factor of a bolt as it is delivered; *common practice*, a first guess to be put right. */
const USUAL_NUT_FACTOR = 0.2;

/** Force that a torque brings by K = 0.2, kN; undefined where the thread's diameter cannot be read off. */
export function usualForceKN(torqueNm: number, { thread }: Pick<FastenerSpec, 'thread'>): number | undefined {
  const diameterMm = Number(/^M(\d+(?:\.\d+)?)/.exec(thread.trim())?.[1]);
  return diameterMm > 0 ? torqueNm / (USUAL_NUT_FACTOR * diameterMm) : undefined;
}
