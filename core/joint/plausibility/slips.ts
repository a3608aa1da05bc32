import { PROPERTY_CLASSES } from '../../fastener/property-class.ts';
import { readThread } from '../../fastener/read-thread.ts';
import { THREADS } from '../../fastener/thread.ts';
import { convertTorque } from '../../quantity/convert.ts';
import { showNumber } from '../../quantity/show-number.ts';
import type { TorqueUnit } from '../../quantity/unit.ts';
import { type JudgedFastener, judgedFastener, usedAt } from './judged-fastener.ts';
import { CREDIBLE, type CredibleFriction, type LubricationState } from './lubrication.ts';

/** What may have gone wrong when a torque was typed. */
export const SLIP_KINDS = ['unit', 'dry-figure', 'class', 'size'] as const;

export interface Slip {
  readonly kind: (typeof SLIP_KINDS)[number];
  /** The unit, lubrication, class or thread that was likely meant. */
  readonly meant: string;
  /** For a slip of unit, the unit that the figure was taken in. */
  readonly taken?: string;
  /** What the torque would then be; the torque itself where fastener or lubrication were mistaken. */
  readonly torqueNm: number;
  /** At usual friction, if it was this slip. */
  readonly utilization: number;
  readonly message: string;
}

/** What is asked about: the torque as it was taken, and the unit that it was typed in where that is told. */
export interface Suspect {
  readonly torqueNm: number;
  readonly typedUnit?: TorqueUnit | undefined;
  readonly lubrication: LubricationState;
  readonly friction: CredibleFriction;
}

type Mistaken = readonly (readonly [meant: TorqueUnit, taken: TorqueUnit])[];

/** Units whose figures are often taken for one another. */
const OFTEN_MISTAKEN: Mistaken = [
  ['lbf·ft', 'N·m'],
  ['kgf·m', 'N·m'],
  ['lbf·in', 'N·m'],
  ['cN·m', 'N·m'],
  ['N·m', 'lbf·ft'],
  ['lbf·in', 'lbf·ft'],
  ['lbf·ft', 'lbf·in'],
  ['N·m', 'kgf·m'],
];

/** Thought of only when the second unit is the one that was typed. */
const SELDOM_MISTAKEN: Mistaken = [
  ['kgf·cm', 'N·m'],
  ['dN·m', 'N·m'],
  ['kN·m', 'N·m'],
  ['kgf·m', 'lbf·ft'],
  ['N·m', 'lbf·in'],
  ['ozf·in', 'lbf·in'],
  ['lbf·in', 'ozf·in'],
  ['kgf·cm', 'kgf·m'],
  ['kgf·m', 'kgf·cm'],
  ['N·m', 'kgf·cm'],
  ['N·m', 'cN·m'],
  ['N·m', 'dN·m'],
  ['N·m', 'kN·m'],
];

/** Share of the yield strength that targets have; 0.8 is the middle of them (common practice). */
const USUAL = { lowest: 0.5, middle: 0.8, highest: 1 };

const isUsual = (utilization: number): boolean => utilization >= USUAL.lowest && utilization <= USUAL.highest;

/**
 * Slips that would make sense of a torque, the likeliest first: a mistaken unit of what was typed, the figure for a dry
 * bolt, another pair of units or a neighbouring size, another class; within each by how usual the torque would then be.
 */
export function slipsOf(suspect: Suspect, judged: JudgedFastener): readonly Slip[] {
  const { typedUnit } = suspect;
  const pairs = typedUnit === undefined ? OFTEN_MISTAKEN : [...OFTEN_MISTAKEN, ...SELDOM_MISTAKEN];
  const units = unitSlips(suspect, pairs, judged);
  const groups = [
    units.filter(({ taken }) => taken === (typedUnit ?? 'N·m')),
    dryFigure(suspect, judged),
    [...(typedUnit === undefined ? units.filter(({ taken }) => taken !== 'N·m') : []), ...sizeSlips(suspect, judged)],
    judged.isAssumed ? [] : classSlips(suspect, judged),
  ];
  return groups.flatMap((group) =>
    group.filter((slip) => isUsual(slip.utilization)).toSorted((a, b) => strangeness(a) - strangeness(b)),
  );
}

const strangeness = ({ utilization }: Slip): number => Math.abs(Math.log(utilization / USUAL.middle));

const figure = (value: number): string => showNumber(value, 'en', { significant: 3 });
const percent = (utilization: number): string => `${Math.round(100 * utilization)} % of its yield strength`;

function unitSlips({ torqueNm, friction }: Suspect, pairs: Mistaken, judged: JudgedFastener): readonly Slip[] {
  return pairs.map(([meant, taken]) => {
    const typed = convertTorque(torqueNm, 'N·m', taken);
    const meantNm = convertTorque(typed, meant, 'N·m');
    const { utilization } = usedAt(meantNm, friction.usual, judged);
    const message = `Was the figure in ${meant}? ${figure(typed)} ${meant}, not ${taken}, uses ${percent(utilization)}.`;
    return { kind: 'unit', meant, taken, torqueNm: meantNm, utilization, message };
  });
}

function dryFigure({ torqueNm, lubrication }: Suspect, judged: JudgedFastener): readonly Slip[] {
  if (lubrication !== 'lubricated') return [];
  const { utilization } = usedAt(torqueNm, CREDIBLE.dry.usual, judged);
  const message = `Is the figure for a dry bolt? Dry it uses ${percent(utilization)}; lubricated it needs less torque.`;
  return [{ kind: 'dry-figure', meant: 'dry', torqueNm, utilization, message }];
}

function classSlips({ torqueNm, friction }: Suspect, judged: JudgedFastener): readonly Slip[] {
  const standardOf = (name: string) => PROPERTY_CLASSES.find((row) => row.name === name)?.standard;
  const others = new Set(
    PROPERTY_CLASSES.filter(({ standard }) => standard === standardOf(judged.className)).map(({ name }) => name),
  );
  others.delete(judged.className);
  return [...others].flatMap((propertyClass) => {
    const other = judgedFastener({ thread: judged.told, propertyClass });
    if (!other.ok) return [];
    const { utilization } = usedAt(torqueNm, friction.usual, other.value);
    const message = `Is the figure for class ${propertyClass}? There it uses ${percent(utilization)}.`;
    return [{ kind: 'class', meant: propertyClass, torqueNm, utilization, message } as const];
  });
}

function sizeSlips({ torqueNm, friction }: Suspect, judged: JudgedFastener): readonly Slip[] {
  return neighbours(judged.thread).flatMap((thread) => {
    const other = judgedFastener({ thread, ...strengthOf(judged) });
    if (!other.ok) return [];
    const { utilization } = usedAt(torqueNm, friction.usual, other.value);
    const message = `Is the figure for ${thread}? There it uses ${percent(utilization)}.`;
    return [{ kind: 'size', meant: thread, torqueNm, utilization, message } as const];
  });
}

/** The same strength on another size: that of the class there, or of the own material. */
const strengthOf = ({ isAssumed, className, isClass, yieldMPa, tensileMPa }: JudgedFastener) =>
  isAssumed
    ? {}
    : isClass
      ? { propertyClass: className }
      : { proofStressMPa: yieldMPa, tensileStrengthMPa: tensileMPa };

/** The two sizes below and above in the same series. */
function neighbours(designation: string): readonly string[] {
  const read = readThread(designation);
  if (!read.ok) return [];
  const { series, majorDiameterMm } = read.value;
  const sizes = THREADS.filter((thread) => thread.series === series && isUsualFine(thread, read.value));
  const place = sizes.findIndex((thread) => thread.majorDiameterMm === majorDiameterMm);
  return sizes
    .slice(Math.max(place - 2, 0), place + 3)
    .flatMap((thread) => (thread.majorDiameterMm === majorDiameterMm ? [] : [thread.designation]));
}

/** Of fine threads, which come in several pitches, those of the same pitch. */
const isUsualFine = (
  thread: { readonly pitchMm: number },
  asked: { readonly series: string; readonly pitchMm: number },
): boolean => asked.series !== 'fine' || thread.pitchMm === asked.pitchMm;
