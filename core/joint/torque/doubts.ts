import type { FastenerData } from '../../fastener/fastener.ts';
import { type NutClass, nutClassFor } from '../../fastener/nut-class.ts';
import { remark } from '../../language/mechanics/remark.ts';
import type { Warning } from '../warning.ts';

/** VDI 2230-1:2015, table A5: from the lowest of class A to the highest of class D. */
const CREDIBLE_FRICTION = { lowest: 0.04, highest: 0.35 };

export function frictionDoubts(field: string, friction: number): readonly Warning[] {
  if (friction < CREDIBLE_FRICTION.lowest) {
    return [{ field, ...remark('friction-low', { friction }) }];
  }
  if (friction <= CREDIBLE_FRICTION.highest) return [];
  return [{ field, ...remark('friction-high', { friction }) }];
}

/** Nuts of style 1 and 2 by rising strength; the thin ones carry less than their number says. */
const NUT_ORDER = ['5', '6', '8', '9', '10', '12'];

export function nutDoubts(nut: NutClass | undefined, data: FastenerData, preloadN: number): readonly Warning[] {
  if (nut === undefined) return [];
  const field = 'nutClass';
  const proofLoadN = nut.proofStressMPa * data.stressAreaMm2;
  const needed = nutClassFor(data.propertyClass ?? '');
  const isThin = !NUT_ORDER.includes(nut.name);
  const isWeaker = needed !== undefined && NUT_ORDER.indexOf(nut.name) < NUT_ORDER.indexOf(needed);
  return [
    ...(isThin ? [{ field, ...remark('nut-thin', { nut: nut.name }) }] : []),
    ...(isWeaker && !isThin
      ? [{ field, ...remark('nut-weaker', { nut: nut.name, bolt: data.propertyClass ?? '', needed }) }]
      : []),
    ...(preloadN > proofLoadN ? [{ field, ...remark('nut-proof', { proofLoadN }) }] : []),
  ];
}

export function utilizationDoubts(utilization: number | undefined, field = 'preloadN'): readonly Warning[] {
  if (utilization === undefined || utilization <= 1) return [];
  return [{ field, ...remark('shank-yields', { yieldShare: utilization }) }];
}

export const classDoubts = ({ remarks, workedOut }: FastenerData): readonly Warning[] => [
  ...(workedOut === undefined ? [] : [{ field: 'thread', ...workedOut }]),
  ...remarks.map((said) => ({ field: 'propertyClass', ...said })),
];
