import { TIGHTENING_FACTORS } from '@clampwright/core/fastener';

/** A way of tightening with its guide values of the tightening factor. */
export interface Method {
  readonly value: string;
  readonly row: (typeof TIGHTENING_FACTORS)[number];
}

/** The ways in which a hand reaches a torque; the others tighten by something else. */
export const METHODS: readonly Method[] = TIGHTENING_FACTORS.flatMap((row, index) =>
  row.method.startsWith('torque wrench') ? [{ value: `method-${index}`, row }] : [],
);

/** Friction is estimated, from a table or a data sheet, until it was tested on the joint. */
export const USUAL_METHOD: Method | undefined = METHODS.find(({ row }) => row.method.endsWith('class B'));
