import type { Failure } from '@clampwright/core/failure';
import type { BoltFault } from '@clampwright/core/fastener';
import type { TorqueUnit } from '@clampwright/core/quantity';

/** What a form itself can find wrong with a field; the words stand in the catalogue under `fault`. */
export type FormFinding =
  | { readonly kind: 'needed' }
  | { readonly kind: 'number'; readonly text: string }
  | {
      readonly kind: 'torque';
      readonly text: string;
      readonly unit: TorqueUnit;
      readonly meant: TorqueUnit | undefined;
    }
  | { readonly kind: 'lower-above-upper' }
  | { readonly kind: 'below-zero' }
  | { readonly kind: 'due-before' }
  | { readonly kind: 'to-come' }
  | { readonly kind: 'pin' }
  | { readonly kind: 'pin-differs' }
  /** What a joint's own check found before its release. */
  | { readonly kind: 'mend'; readonly word: MendWord }
  | { readonly kind: 'whole'; readonly from: number; readonly to: number }
  | { readonly kind: 'between'; readonly from: number; readonly to: number }
  | { readonly kind: 'positive' }
  | { readonly kind: 'each-once'; readonly count: number }
  | { readonly kind: 'label-twice'; readonly label: string }
  | { readonly kind: 'taken'; readonly name: string }
  /** A figure of an own bolt that cannot be beside another. */
  | { readonly kind: 'bolt'; readonly fault: BoltFault };

export type MendWord =
  | 'class'
  | 'thread'
  | 'no-face'
  | 'too-near'
  | 'share-with-angle'
  | 'last-share'
  | 'left-loose'
  | 'angle-early'
  | 'angle-from-inside'
  | 'prevailing-too-high'
  | 'speed-without-angle'
  | 'typed-differs'
  | 'no-width'
  | 'torque-for-fastener'
  | 'limits-order'
  | 'window-missing'
  | 'plan-stage'
  | 'shares-rise'
  | 'order-of-another'
  | 'three-figures'
  | 'targets-count'
  | 'closing-last';

/** What is wrong with one field: found by the form, or told by the room of the core that read it. */
export interface Fault {
  readonly field: string;
  readonly finding: FormFinding | Failure;
}

/** Puts a refusal of a part at its place in the whole: `target` within `stages[0].torque`. */
export function faultAt(place: string, failure: Failure): Fault {
  if (failure.kind !== 'invalid' || failure.field === '' || failure.field.startsWith('(')) {
    return { field: place, finding: failure };
  }
  return { field: place === '' ? failure.field : `${place}.${failure.field}`, finding: failure };
}

/** Whether `field` is `place` or lies inside of it. */
const liesIn = (field: string, place: string): boolean =>
  field === place || field.startsWith(`${place}.`) || field.startsWith(`${place}[`);

/** The first fault of exactly this field. */
export const faultOf = (faults: readonly Fault[], field: string): Fault | undefined =>
  faults.find((fault) => fault.field === field);

/** Every fault of a place or inside of it, without those that a field of its own shows. */
export const faultsWithin = (
  faults: readonly Fault[],
  place: string,
  shown: readonly string[] = [],
): readonly Fault[] => faults.filter(({ field }) => liesIn(field, place) && !shown.includes(field));
