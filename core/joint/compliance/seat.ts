import { ok, type Result } from '../../failure/failure.ts';
import type { BearingStandard } from '../../fastener/bearing-face.ts';
import { workedOutOf } from '../../fastener/bolt-fault.ts';
import type { OwnThread } from '../../fastener/own-thread.ts';
import { readThread } from '../../fastener/read-thread.ts';
import { type Remark, remark } from '../../language/mechanics/remark.ts';
import { type Tightened, tightened } from '../torque/tightened.ts';
import type { HeadForm } from './bolt-sections.ts';
import type { ComplianceRequest } from './request.ts';

/** The fastener looked up, with what was taken from tables for want of a figure. */
export interface Seat extends Tightened {
  readonly assumptions: readonly Remark[];
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
  const assumptions = [
    ...(head === undefined ? [] : [remark('bearing-circle-of', { head })]),
    ...(given.holeMm === undefined && own?.holeMm === undefined
      ? [remark(isMetric ? 'hole-iso-273' : 'hole-asme')]
      : []),
    ...(own === undefined ? [] : ownAssumptions(own, shank)),
  ];
  return ok({ ...seat.value, assumptions });
}

function ownAssumptions(own: OwnThread, shank: Given['shank']): readonly Remark[] {
  const workedOut = workedOutOf(own);
  const { shankDiameterMm: shankMm } = own;
  return [
    ...(workedOut === undefined ? [] : [workedOut]),
    ...(shankMm !== undefined && shank.length === 0 ? [remark('shank-no-section', { shankMm })] : []),
  ];
}
