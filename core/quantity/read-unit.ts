import { invalid, ok, type Result } from '../failure/failure.ts';
import { UNITS, type Unit } from './unit.ts';

/** Between the parts of a unit these say nothing: dots, crosses, hyphens, spaces. A stroke divides and stays. */
const SEPARATORS = /[\s.·⋅•∙×*_\-‐‑–]/gu;

const bare = (text: string): string => text.replace(SEPARATORS, '');

const bySpelling: ReadonlyMap<string, Unit> = new Map(
  UNITS.flatMap(({ name, also }) => [name, ...also].map((spelling): [string, Unit] => [bare(spelling), name])),
);

/** For text in one case alone. `mPa` and `MPa` differ by a thousand million, so mixed case must be exact. */
const byLowerCase: ReadonlyMap<string, Unit> = new Map(
  [...bySpelling].map(([spelling, unit]): [string, Unit] => [spelling.toLowerCase(), unit]),
);

/**
 * Reads a unit in the spellings of the trade: `N·m`, `Nm`, `N.m`, `N m`, `ft-lb`, `in.lbf`, `kgf.cm`, `PSI`, `°`.
 *
 * @param text  unit alone, without a figure
 * @param field named in the refusal
 */
export function readUnit(text: string, field = 'unit'): Result<Unit> {
  const typed = bare(text);
  const isOneCase = typed === typed.toLowerCase() || typed === typed.toUpperCase();
  const unit = bySpelling.get(typed) ?? (isOneCase ? byLowerCase.get(typed.toLowerCase()) : undefined);
  if (unit !== undefined) return ok(unit);
  const known = UNITS.map(({ name }) => name).join(', ');
  return invalid(
    field,
    text.trim() === '' ? 'There is no unit.' : `“${text.trim()}” is no unit known here.`,
    `one of ${known}`,
  );
}
