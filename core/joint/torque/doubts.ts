import type { FastenerData } from '../../fastener/fastener.ts';
import { type NutClass, nutClassFor } from '../../fastener/nut-class.ts';
import { showNumber } from '../../quantity/show-number.ts';
import type { Warning } from '../warning.ts';

/** VDI 2230-1:2015, table A5: from the lowest of class A to the highest of class D. */
const CREDIBLE_FRICTION = { lowest: 0.04, highest: 0.35 };

export function frictionDoubts(field: string, friction: number): readonly Warning[] {
  if (friction < CREDIBLE_FRICTION.lowest) {
    return [
      { field, message: `A friction of ${friction} is less than lubricants reach (0.04; VDI 2230-1, table A5).` },
    ];
  }
  if (friction <= CREDIBLE_FRICTION.highest) return [];
  return [
    { field, message: `At a friction of ${friction} surfaces are about to seize (VDI 2230-1, table A5, class E).` },
  ];
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
    ...(isThin
      ? [{ field, message: `A nut of class ${nut.name} is thin: its thread strips before the bolt breaks.` }]
      : []),
    ...(isWeaker && !isThin
      ? [
          {
            field,
            message: `A nut of class ${nut.name} is weaker than a bolt of ${data.propertyClass}, which wants ${needed}.`,
          },
        ]
      : []),
    ...(preloadN > proofLoadN
      ? [{ field, message: `The preload is above the proof load of the nut, ${kilonewtons(proofLoadN)} kN.` }]
      : []),
  ];
}

export function utilizationDoubts(utilization: number | undefined, field = 'preloadN'): readonly Warning[] {
  if (utilization === undefined || utilization <= 1) return [];
  const percent = showNumber(100 * utilization, 'en', { significant: 3 });
  return [{ field, message: `The shank yields while it is tightened: ${percent} % of its yield strength.` }];
}

export const classDoubts = ({ notes, workedOut }: FastenerData): readonly Warning[] => [
  ...(workedOut === undefined ? [] : [{ field: 'thread', message: workedOut }]),
  ...notes.map((message) => ({ field: 'propertyClass', message })),
];

const kilonewtons = (forceN: number): string => showNumber(forceN / 1000, 'en', { significant: 3 });
