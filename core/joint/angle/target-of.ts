import { invalid, ok, type Result } from '../../failure/failure.ts';
import { showNumber } from '../../quantity/show-number.ts';
import { LENGTH_FIELDS, turnOf } from './code-turns.ts';
import type { TighteningAngleRequest } from './request.ts';
import { type Stretch, travelMm, turnDeg, ultimatePreloadN, yieldPreloadN } from './stretch.ts';
import type { Tightening } from './tightening.ts';
import { preloadAfterTurnN } from './turned-joint.ts';

/** What is aimed at, as angle and as preload. */
export interface Target {
  readonly angleDeg: number;
  readonly preloadN: number;
}

const newtons = (preloadN: number): string => `${showNumber(Math.round(preloadN), 'en')} N`;

/**
 * Angle and preload of a target given as either, or as a code's turn.
 *
 * @returns refused when none or several were given, the preload lies below snug or beyond what breaks the bolt, or the
 *          code has no turn for the length
 */
export function targetOf(request: TighteningAngleRequest, tightening: Tightening, stretch: Stretch): Result<Target> {
  const { preloadN, angleDeg, turnOfNut } = request;
  const given = [preloadN, angleDeg, turnOfNut].filter((one) => one !== undefined).length;
  if (given !== 1)
    return invalid(
      'preloadN',
      `${given === 0 ? 'No target is' : 'Several targets are'} given.`,
      'one of preloadN, angleDeg, turnOfNut',
    );
  const target =
    preloadN === undefined ? byAngle(request, tightening, stretch) : byPreload(preloadN, tightening, stretch);
  if (!target.ok) return target;
  const isPlastic = target.value.preloadN > yieldPreloadN(stretch);
  if (isPlastic && stretch.sections.every(({ lengthMm }) => lengthMm === 0))
    return invalid(
      'plasticLengthMm',
      'It is missing: the target lies past yield.',
      'length of thread that stretches, mm',
    );
  return target;
}

function byPreload(preloadN: number, { snugPreloadN, joint }: Tightening, stretch: Stretch): Result<Target> {
  const ultimateN = ultimatePreloadN(stretch);
  if (preloadN > ultimateN)
    return invalid(
      'preloadN',
      `${newtons(preloadN)} is beyond the ${newtons(ultimateN)} at which the bolt breaks while it is tightened.`,
      `at most ${newtons(Math.min(ultimateN, yieldPreloadN(stretch)))}, where it yields`,
    );
  if (preloadN < snugPreloadN)
    return invalid('preloadN', `${newtons(preloadN)} is less than at snug.`, `at least ${newtons(snugPreloadN)}`);
  const angleDeg = turnDeg(travelMm(stretch, preloadN) - travelMm(stretch, snugPreloadN), joint.geometry.pitchMm);
  return ok({ angleDeg, preloadN });
}

function byAngle(request: TighteningAngleRequest, tightening: Tightening, stretch: Stretch): Result<Target> {
  const angleDeg = request.angleDeg ?? codeAngle(request, tightening);
  if (typeof angleDeg !== 'number') return angleDeg;
  const { joint, snugPreloadN } = tightening;
  const preloadN = preloadAfterTurnN(stretch, joint.geometry.pitchMm, snugPreloadN, angleDeg);
  const ultimateN = ultimatePreloadN(stretch);
  if (preloadN < ultimateN) return ok({ angleDeg, preloadN });
  const mostDeg = turnDeg(travelMm(stretch, ultimateN) - travelMm(stretch, snugPreloadN), joint.geometry.pitchMm);
  return invalid(
    request.angleDeg === undefined ? 'turnOfNut' : 'angleDeg',
    `A turn of ${angleDeg}° breaks the bolt: it is reckoned to bear ${Math.floor(mostDeg)}°.`,
    `less than ${Math.floor(mostDeg)}°`,
  );
}

function codeAngle(
  request: TighteningAngleRequest,
  { thread, springs }: Tightening,
): number | ReturnType<typeof invalid> {
  const code = request.turnOfNut ?? 'RCSC';
  const field = LENGTH_FIELDS[code];
  const lengths = { boltLengthMm: request.boltLengthMm, gripMm: springs.gripMm };
  if (lengths[field] === undefined)
    return invalid(field, `It is missing: ${code} tells the turn by it.`, 'a length in mm');
  const turn = turnOf(code, { ...lengths, boltMm: thread.majorDiameterMm, sloped: request.slopedFaces });
  return turn === undefined
    ? invalid(
        field,
        `${code} has no turn for so long a bolt; it is found by a test with the same bolts.`,
        'a length within its table',
      )
    : turn.angleDeg;
}
