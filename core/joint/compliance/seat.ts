import { ok, type Result } from '../../failure/failure.ts';
import type { BearingStandard } from '../../fastener/bearing-face.ts';
import { readThread } from '../../fastener/read-thread.ts';
import { type Tightened, tightened } from '../torque/tightened.ts';
import type { HeadForm } from './bolt-sections.ts';
import type { ComplianceRequest } from './request.ts';

/** The fastener looked up, with what was taken from tables for want of a figure. */
export interface Seat extends Tightened {
  readonly assumptions: readonly string[];
}

const METRIC_HEADS: Readonly<Record<HeadForm, BearingStandard>> = {
  hexagon: 'ISO 4014',
  socket: 'ISO 4762',
  stud: 'ISO 4032',
};

type Given = Pick<ComplianceRequest, 'thread' | 'headForm' | 'bearingOuterMm' | 'holeMm' | 'propertyClass'>;

/**
 * Thread, bearing circle and hole as given, or else of the usual head and clearance.
 *
 * @returns refused as `tightened` refuses
 */
export function seatOf({ headForm, ...given }: Given): Result<Seat> {
  const thread = readThread(given.thread);
  if (!thread.ok) return thread;
  const isMetric = thread.value.system === 'ISO metric';
  const seat = tightened({ ...given, head: isMetric ? METRIC_HEADS[headForm] : undefined });
  if (!seat.ok) return seat;
  const { head } = seat.value;
  const clearance = isMetric ? 'ISO 273, medium' : 'ASME B18.2.8, normal fit';
  const assumptions = [
    ...(head === undefined ? [] : [`The bearing circle is ${head}’s.`]),
    ...(given.holeMm === undefined ? [`The hole is that of ${clearance}.`] : []),
  ];
  return ok({ ...seat.value, assumptions });
}
