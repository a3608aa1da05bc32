import { quantityOf, type Unit, unitsOf } from '@clampwright/core/quantity';

/* The registry writes units into the names of its fields; the screen shows them behind the figure. */

// Longest first, so that `PerMm` is not taken for `Mm`. The third is the unit that can be changed into others.
const SUFFIXES: readonly (readonly [suffix: string, shown: string, unit?: Unit])[] = [
  ['NmPerDeg', 'N·m/°'],
  ['NPerMm3', 'N/mm³'],
  ['NPerMm', 'N/mm'],
  ['NPerDeg', 'N/°'],
  ['MmPerN', 'mm/N'],
  ['DegPerS', '°/s'],
  ['PerK', '1/K'],
  ['Percent', '%'],
  ['Mm2', 'mm²'],
  ['MPa', 'MPa', 'MPa'],
  ['Deg', '°', 'deg'],
  ['Um', 'µm'],
  ['Nm', 'N·m', 'N·m'],
  ['Mm', 'mm', 'mm'],
  ['N', 'N', 'N'],
  ['MPerMin', 'm/min'],
  ['S', 's'],
  ['M', 'm'],
  ['K', 'K'],
  ['C', '°C'],
];

const LONE = new Set(['mmPerN', 'nPerMm']);

const SHARES = new Set([
  'share',
  'shareAtCurrent',
  'targetShare',
  'starSpread',
  'circularSpread',
  'falseAccept',
  'falseReject',
]);

/** Shown in percent; `probabilityBelowN` is a share of what lies below so many newtons. */
export const isShare = (name: string): boolean =>
  SHARES.has(name) || ['probability', 'spread', 'minOverTarget'].some((beginning) => name.startsWith(beginning));

const rowOf = (name: string) =>
  isShare(name)
    ? undefined
    : SUFFIXES.find(
        ([suffix]) =>
          (name.endsWith(suffix) && /[a-z0-9]$/.test(name.slice(0, -suffix.length))) ||
          (LONE.has(name) && name.toLowerCase() === suffix.toLowerCase()),
      );

/** The unit at the end of a field's name, such as `N·m` of `torqueNm`; undefined for a name without one. */
export const unitInName = (name: string): string | undefined => rowOf(name)?.[1];

/** The unit of a field that can be shown and typed in others; undefined for one that cannot. */
export const changeableUnit = (name: string): Unit | undefined => rowOf(name)?.[2];

/** Units that somebody in the trade reads that quantity in; the rest of the table would only be in the way. */
const OFFERED: ReadonlySet<Unit> = new Set([
  'N·m',
  'lbf·ft',
  'lbf·in',
  'kgf·m',
  'N',
  'kN',
  'lbf',
  'kgf',
  'mm',
  'in',
  'MPa',
  'psi',
  'ksi',
  'deg',
  'rad',
  'turn',
]);

/** What a field may be shown and typed in, its own unit first; empty where there is no choice. */
export function unitChoices(name: string): readonly Unit[] {
  const own = changeableUnit(name);
  return own === undefined ? [] : unitsOf(quantityOf(own)).filter((unit) => OFFERED.has(unit));
}
