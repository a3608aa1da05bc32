import { invalid, ok, type Result } from '../../failure/failure.ts';
import { profileOf } from '../../fastener/profile.ts';
import type { Thread } from '../../fastener/thread.ts';
import type { Remark } from '../../language/mechanics/remark.ts';
import { complianceOf } from '../compliance/compliance.ts';
import { seatOf } from '../compliance/seat.ts';
import type { ThreadAndBearing } from '../torque/thread-and-bearing.ts';
import type { Warning } from '../warning.ts';
import type { TighteningAngleRequest } from './request.ts';

/** What stretches when the nut is turned. */
export interface TurnedSprings {
  readonly boltMmPerN: number;
  readonly partsMmPerN: number;
  /** Lengths that may yield, each over the area that carries it; of no length where none is known. */
  readonly yielding: readonly { readonly lengthMm: number; readonly areaMm2: number }[];
  readonly gripMm?: number | undefined;
  readonly geometry: ThreadAndBearing;
  readonly assumptions: readonly Remark[];
  readonly warnings: readonly Warning[];
}

/** Springs of a joint that is described, or as they are known. */
export function springsOf(request: TighteningAngleRequest, thread: Thread): Result<TurnedSprings> {
  const { layers, boltMmPerN, partsMmPerN } = request;
  if (boltMmPerN !== undefined && partsMmPerN !== undefined)
    return knownSprings(request, thread, { boltMmPerN, partsMmPerN });
  const lone = boltMmPerN === undefined ? 'boltMmPerN' : 'partsMmPerN';
  if (boltMmPerN !== undefined || partsMmPerN !== undefined)
    return invalid(lone, 'It is missing.', 'both compliances, or neither and the layers');
  if (layers === undefined) return invalid('layers', 'They are missing.', 'the clamped parts, or both compliances');
  return describedSprings({ ...request, layers }, thread);
}

function knownSprings(
  request: TighteningAngleRequest,
  thread: Thread,
  known: { readonly boltMmPerN: number; readonly partsMmPerN: number },
): Result<TurnedSprings> {
  const seat = seatOf(request);
  if (!seat.ok) return seat;
  const { plasticLengthMm: lengthMm = 0, gripMm } = request;
  const yielding = [{ lengthMm, areaMm2: profileOf(thread).stressAreaMm2 }];
  const { geometry, assumptions } = seat.value;
  return ok({ ...known, geometry, assumptions, yielding, gripMm, warnings: [] });
}

function describedSprings(
  request: TighteningAngleRequest & { readonly layers: NonNullable<TighteningAngleRequest['layers']> },
  thread: Thread,
): Result<TurnedSprings> {
  const seat = seatOf(request);
  if (!seat.ok) return seat;
  const compliance = complianceOf(request);
  if (!compliance.ok) return compliance;
  const { boltMmPerN, partsMmPerN, boltSections, gripMm, assumptions, warnings } = compliance.value;
  const threadMm2 = profileOf(thread).stressAreaMm2;
  const yielding = boltSections.flatMap(({ part, lengthMm, areaMm2 }) => {
    if (part === 'shank') return [{ lengthMm, areaMm2 }];
    return part === 'thread' || part === 'engaged thread' ? [{ lengthMm, areaMm2: threadMm2 }] : [];
  });
  return ok({ boltMmPerN, partsMmPerN, yielding, gripMm, geometry: seat.value.geometry, assumptions, warnings });
}
