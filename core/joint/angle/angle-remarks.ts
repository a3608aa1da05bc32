import type { Warning } from '../warning.ts';
import { ultimatePreloadN, yieldPreloadN } from './stretch.ts';
import type { Worked } from './worked.ts';

/** What was taken for granted, the law of the steel above all. */
export function angleAssumptions({ request, tightening }: Worked): readonly string[] {
  const { springs, strength, friction } = tightening;
  return [
    ...springs.assumptions,
    'At snug the parts lie on one another; what was gaping before does not count.',
    ...(strength === undefined
      ? ['The strength of the bolt is not told: all is taken as elastic, whatever the preload.']
      : [
          LAWS[request.boltLaw](request.uniformStrain),
          'Shank, free and engaged thread may yield; head and nut do not.',
        ]),
    ...(strength !== undefined && friction === undefined
      ? ['Torsion is left out, since no friction is told: a bolt turned by its nut yields sooner.']
      : []),
    ...(strength !== undefined && request.prevailingTorqueNm > 0
      ? ['The prevailing torque’s own share of the torsion is left out of the yield point.']
      : []),
  ];
}

const LAWS = {
  bilinear: (strain: number) =>
    `Assumption: the steel is elastic up to yield, then hardens in a straight line to the tensile strength at ${strain * 100} % plastic strain.`,
  smooth: (strain: number) =>
    `Assumption: the steel follows a power law through 0.2 % plastic strain at yield and ${strain * 100} % at the tensile strength.`,
} as const;

/** What the reader must know before the figure is used. */
export function angleDoubts(worked: Worked): readonly Warning[] {
  const { tightening, preloadN, stretch, window, request } = worked;
  const isPastYield = preloadN > yieldPreloadN(stretch);
  return [
    ...tightening.springs.warnings,
    ...(isPastYield ? [PAST_YIELD] : []),
    ...(!isPastYield && window && window.preloadHighN > yieldPreloadN(stretch) ? [MAY_YIELD] : []),
    ...(window?.breaks === true ? [MAY_BREAK] : []),
    ...(preloadN > 0.9 * ultimatePreloadN(stretch) ? [NEAR_BREAKING] : []),
    ...(tightening.snugPreloadN === 0 && request.angleDeg === undefined ? [NO_SNUG] : []),
  ];
}

const PAST_YIELD: Warning = {
  field: 'preloadN',
  message:
    'The bolt yields. That is for joints and bolts meant for it; it is not used again unless the maker allows it, and the parts must bear the preload.',
};
const MAY_YIELD: Warning = {
  field: 'frictionLow',
  message: 'With friction at the lower end the bolt would be past yield at this angle.',
};
const MAY_BREAK: Warning = {
  field: 'frictionLow',
  message: 'Within the range of friction the bolt would break before this angle is reached.',
};
const NEAR_BREAKING: Warning = {
  field: 'preloadN',
  message: 'Less than a tenth is left to the breaking of the bolt.',
};
const NO_SNUG: Warning = {
  field: 'snugTorqueNm',
  message: 'The angle is counted from no load at all; a real joint needs a snug torque that closes it first.',
};
