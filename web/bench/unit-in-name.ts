/* The registry writes units into the names of its fields; the screen shows them behind the figure. */

// Longest first, so that `PerMm` is not taken for `Mm`.
const SUFFIXES = [
  ['NPerMm', 'N/mm'],
  ['NmPerDeg', 'N·m/°'],
  ['NPerDeg', 'N/°'],
  ['MmPerN', 'mm/N'],
  ['DegPerS', '°/s'],
  ['Mm2', 'mm²'],
  ['MPa', 'MPa'],
  ['Percent', '%'],
  ['PerK', '1/K'],
  ['Deg', '°'],
  ['Nm', 'N·m'],
  ['Mm', 'mm'],
  ['Um', 'µm'],
  ['K', 'K'],
  ['N', 'N'],
  ['S', 's'],
] as const;

/** `probabilityBelowN` is a share of what lies below so many newtons. */
const isShare = (name: string): boolean => name.startsWith('probability');

/** The unit at the end of a field's name, such as `N·m` of `torqueNm`; undefined for a name without one. */
export const unitInName = (name: string): string | undefined =>
  isShare(name)
    ? undefined
    : SUFFIXES.find(([suffix]) => name.endsWith(suffix) && /[a-z0-9]$/.test(name.slice(0, -suffix.length)))?.[1];

/** The name without its unit: `torque` of `torqueNm`. */
export function withoutUnit(name: string): string {
  if (isShare(name)) return name;
  const suffix = SUFFIXES.find(([end]) => name.endsWith(end) && /[a-z0-9]$/.test(name.slice(0, -end.length)))?.[0];
  return suffix === undefined ? name : name.slice(0, -suffix.length);
}
