import type { ReferenceStandard } from '@clampwright/core/wrench';
import { demoId } from '../identity.ts';
import { dayBefore } from './days.ts';

const LABORATORY = 'Torque laboratory of the valley (invented)';

/** Transducers of the calibration bench, certificate by certificate; the large one falls due soon. */
export function demoReferences(now: Date): readonly ReferenceStandard[] {
  const small = {
    id: demoId('reference small'),
    name: 'Bench transducer 250',
    serial: 'KH-R1',
    lowestNm: 4,
    highestNm: 250,
    by: LABORATORY,
    expandedUncertaintyPercent: 0.25,
    place: 'Calibration bench, valley workshop',
  };
  const large = {
    ...small,
    id: demoId('reference large'),
    name: 'Bench transducer 1100',
    serial: 'KH-R2',
    lowestNm: 50,
    highestNm: 1100,
    expandedUncertaintyPercent: 0.3,
  };
  const certificate = (reference: typeof small, daysAgo: number, number: string): ReferenceStandard => ({
    ...reference,
    certificate: number,
    calibratedOn: dayBefore(now, daysAgo),
    dueOn: dayBefore(now, daysAgo - 730),
  });
  return [
    certificate(small, 1640, 'VL-2144'),
    certificate(small, 930, 'VL-2387'),
    certificate(small, 210, 'VL-2601'),
    certificate(large, 1450, 'VL-2190'),
    certificate(large, 712, 'VL-2455'),
  ];
}

/** The certificate of a reference that held on a day. */
export function certificateOn(
  references: readonly ReferenceStandard[],
  serial: string,
  day: string,
): ReferenceStandard {
  const held = references.findLast((one) => one.serial === serial && one.calibratedOn <= day && day <= one.dueOn);
  if (!held) throw new Error(`${serial} has no certificate for ${day}`);
  return held;
}
