import { type Remark, remark } from '../../language/mechanics/remark.ts';
import type { Warning } from '../warning.ts';
import { ultimatePreloadN, yieldPreloadN } from './stretch.ts';
import type { Worked } from './worked.ts';

/** What was taken for granted, the law of the steel above all. */
export function angleAssumptions({ request, tightening }: Worked): readonly Remark[] {
  const { springs, strength, friction } = tightening;
  const strainShare = request.uniformStrain;
  return [
    ...springs.assumptions,
    remark('snug-closed'),
    ...(strength === undefined
      ? [remark('strength-untold')]
      : [remark(`law-${request.boltLaw}`, { strainShare }), remark('what-may-yield')]),
    ...(strength !== undefined && friction === undefined ? [remark('torsion-left-out')] : []),
    ...(strength !== undefined && request.prevailingTorqueNm > 0 ? [remark('prevailing-left-out')] : []),
  ];
}

/** What the reader must know before the figure is used. */
export function angleDoubts(worked: Worked): readonly Warning[] {
  const { tightening, preloadN, stretch, window, request } = worked;
  const isPastYield = preloadN > yieldPreloadN(stretch);
  return [
    ...tightening.springs.warnings,
    ...(isPastYield ? [doubt('preloadN', 'past-yield')] : []),
    ...(!isPastYield && window && window.preloadHighN > yieldPreloadN(stretch)
      ? [doubt('frictionLow', 'may-yield')]
      : []),
    ...(window?.breaks === true ? [doubt('frictionLow', 'may-break')] : []),
    ...(preloadN > 0.9 * ultimatePreloadN(stretch) ? [doubt('preloadN', 'near-breaking')] : []),
    ...(tightening.snugPreloadN === 0 && request.angleDeg === undefined ? [doubt('snugTorqueNm', 'no-snug')] : []),
  ];
}

type Doubt = 'past-yield' | 'may-yield' | 'may-break' | 'near-breaking' | 'no-snug';

const doubt = (field: string, code: Doubt): Warning => ({ field, ...remark(code) });
