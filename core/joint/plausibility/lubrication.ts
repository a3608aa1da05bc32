import { FRICTION_CLASSES, type FrictionClassRow } from '../../fastener/friction-classes.ts';

/** How a fastener is lubricated, as far as it is told. */
export const LUBRICATION_STATES = ['lubricated', 'dry', 'unknown'] as const;
export type LubricationState = (typeof LUBRICATION_STATES)[number];

/** Friction from the least to the greatest that is credible, and what is reckoned with. */
export interface CredibleFriction {
  readonly lowest: number;
  readonly usual: number;
  readonly highest: number;
}

const classRow = (name: FrictionClassRow['name']): FrictionClassRow => {
  const row = FRICTION_CLASSES.find((one) => one.name === name);
  if (!row) throw new Error(`no friction class ${name}`);
  return row;
};

const B = classRow('B');
const C = classRow('C');
const D = classRow('D');

/**
 * Credible friction of each state.
 *
 * @source VDI 2230-1:2015, table A5: class B for lubricated, C for dry or as delivered; the middle of a class is what is
 *         reckoned with. 0.14, where both meet, stands for what is not known (common practice)
 */
export const CREDIBLE: Readonly<Record<LubricationState, CredibleFriction>> = {
  lubricated: { lowest: B.lowest, usual: 0.12, highest: B.highest ?? 0.16 },
  dry: { lowest: C.lowest, usual: 0.19, highest: C.highest ?? 0.24 },
  unknown: { lowest: B.lowest, usual: 0.14, highest: C.highest ?? 0.24 },
};

/** The highest that surfaces have which do not seize: class D. */
export const HIGHEST_FRICTION = D.highest ?? 0.35;
