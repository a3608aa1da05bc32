import type { Thread } from './thread.ts';

const SQUARE_ROOT_OF_3 = Math.sqrt(3);

/** Diameters of the basic profile, mm. */
export interface Profile {
  /** d2, where thread and gap are equally wide. */
  readonly pitchDiameterMm: number;
  /** d1 (D1), basic minor diameter. */
  readonly minorDiameterMm: number;
  /** Area over which the fastener carries its load. */
  readonly stressAreaMm2: number;
}

/**
 * What follows from a thread's basic size; of a bolt of one's own, what was not given.
 *
 * @source ISO 68-1:1998 and ISO 724:1993 (d2 = d − 3H/4, d1 = d − 5H/4, H = P·√3/2); stress area by ISO 898-1:2013,
 *         9.1.6 (d0 = (d2 + d3)/2, d3 = d1 − H/6) and ASME B1.1-2003, appendix B (d0 = d2 − 3H/8)
 */
export function profileOf({ own, system, majorDiameterMm, pitchMm }: Thread): Profile {
  const heightMm = (pitchMm * SQUARE_ROOT_OF_3) / 2;
  const pitchDiameterMm = own?.pitchDiameterMm ?? majorDiameterMm - (3 * heightMm) / 4;
  const minorDiameterMm = own?.minorDiameterMm ?? majorDiameterMm - (5 * heightMm) / 4;
  const metricDiameterMm = (pitchDiameterMm + (own?.rootDiameterMm ?? minorDiameterMm - heightMm / 6)) / 2;
  const stressDiameterMm = system === 'ISO metric' ? metricDiameterMm : pitchDiameterMm - (3 * heightMm) / 8;
  const stressAreaMm2 = own?.stressAreaMm2 ?? (Math.PI / 4) * stressDiameterMm ** 2;
  return { pitchDiameterMm, minorDiameterMm, stressAreaMm2 };
}

/**
 * d3, the diameter at the root of a metric bolt.
 *
 * @source ISO 898-1:2013, 9.1.6: d3 = d1 − H/6
 */
export function rootDiameterMm({ own, majorDiameterMm, pitchMm }: Thread): number {
  if (own?.rootDiameterMm !== undefined) return own.rootDiameterMm;
  if (own?.minorDiameterMm !== undefined) return own.minorDiameterMm - (SQUARE_ROOT_OF_3 * pitchMm) / 12;
  return majorDiameterMm - (17 / 24) * SQUARE_ROOT_OF_3 * pitchMm;
}
