import { ok, type Result } from '../../failure/failure.ts';
import type { BearingStandard } from '../../fastener/bearing-face.ts';
import { workedOutOf } from '../../fastener/bolt-fault.ts';
import type { OwnThread } from '../../fastener/own-thread.ts';
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

type Given = Pick<ComplianceRequest, 'thread' | 'headForm' | 'shank' | 'bearingOuterMm' | 'holeMm' | 'propertyClass'>;

/**
 * Thread, bearing circle and hole as given, or else of the usual head and clearance.
 *
 * @returns refused as `tightened` refuses
 */
export function seatOf({ headForm, shank, ...given }: Given): Result<Seat> {
  const thread = readThread(given.thread);
  if (!thread.ok) return thread;
  const { system, own } = thread.value;
  const isMetric = system === 'ISO metric';
  const isHeadTold = own?.bearingOuterMm !== undefined;
  const seat = tightened({ ...given, head: isMetric && !isHeadTold ? METRIC_HEADS[headForm] : undefined });
  if (!seat.ok) return seat;
  const { head } = seat.value;
  const clearance = isMetric ? 'ISO 273, medium' : 'ASME B18.2.8, normal fit';
  const assumptions = [
    ...(head === undefined ? [] : [`The bearing circle is ${head}’s.`]),
    ...(given.holeMm === undefined && own?.holeMm === undefined ? [`The hole is that of ${clearance}.`] : []),
    ...(own === undefined ? [] : ownAssumptions(own, shank)),
  ];
  return ok({ ...seat.value, assumptions });
}

function ownAssumptions(own: OwnThread, shank: Given['shank']): readonly string[] {
  const workedOut = workedOutOf(own);
  const isShankMissing = own.shankDiameterMm !== undefined && shank.length === 0;
  return [
    ...(workedOut === undefined ? [] : [workedOut]),
    ...(isShankMissing
      ? [`The shank of ${own.shankDiameterMm} mm is no section of the grip: tell its length as shank.`]
      : []),
  ];
}
