import { invalid, ok, type Result } from '../failure/failure.ts';
import { checkTorque, HAND_TORQUE, type TorqueRange } from '../quantity/torque.ts';

/** What turns the fastener off the axis of the drive; see `adapterSchema` of a wrench. */
export interface Lever {
  /** From the square drive to the centre of the fastener, mm. */
  readonly lengthMm: number;
  /** 0 straight out, 90 square to the handle, 180 folded back over it. */
  readonly angleDeg: number;
}

const UP_TO_HAND_TORQUE: TorqueRange = { lowestNm: 0, highestNm: HAND_TORQUE.highestNm };

/** An adapter folded back leaves less than this share of the lever: a hair's breadth would move the torque by much. */
const LEAST_SHARE = 0.05;

/**
 * What the wrench must show so that the fastener gets a torque.
 *
 * T_set = T L / (L + E cos a)
 *
 * @param torqueNm torque wanted at the fastener, 0 or more
 * @param leverMm  L, from the square drive to the hand, above 0
 * @param adapter  E and a; left out: none. Square to the handle it changes nothing, beyond that it raises the setting
 * @returns refused with field `adapterMm` where the adapter reaches back to the hand or beyond (L + E cos a near 0),
 * and with `torqueNm` where no hand tool gives so much
 * @source TM 9-254, figure 4-6; FAA AC 43.13-1B, figure 7-2 (from memory). Holds for a hand at the marked point,
 * pulling square to the handle
 */
export function wrenchSetting(
  torqueNm: number,
  leverMm: number,
  adapter?: Lever,
): Result<{ readonly settingNm: number; readonly factor: number }> {
  const wantedNm = checkTorque(torqueNm, 'N·m', UP_TO_HAND_TORQUE, 'torqueNm');
  if (!wantedNm.ok) return wantedNm;
  const reachMm = reachOf(leverMm, adapter);
  if (!reachMm.ok) return reachMm;
  return ok({ settingNm: (torqueNm * leverMm) / reachMm.value, factor: leverMm / reachMm.value });
}

/**
 * What reached the fastener when the wrench showed a torque; the inverse of `wrenchSetting`, refused alike.
 *
 * @param readingNm torque that the wrench showed; below 0 when it was turned loose
 */
export function appliedTorque(
  readingNm: number,
  leverMm: number,
  adapter?: Lever,
): Result<{ readonly torqueNm: number; readonly factor: number }> {
  const shownNm = checkTorque(Math.abs(readingNm), 'N·m', UP_TO_HAND_TORQUE, 'readingNm');
  if (!shownNm.ok) return shownNm;
  const reachMm = reachOf(leverMm, adapter);
  if (!reachMm.ok) return reachMm;
  return ok({ torqueNm: (readingNm * reachMm.value) / leverMm, factor: reachMm.value / leverMm });
}

/** From the hand to the centre of the fastener, along the handle. */
function reachOf(leverMm: number, adapter: Lever | undefined): Result<number> {
  if (!(leverMm > 0 && Number.isFinite(leverMm)))
    return invalid('leverMm', `a lever of ${leverMm} mm`, 'more than 0 mm');
  if (!adapter) return ok(leverMm);
  if (!(adapter.lengthMm >= 0 && Number.isFinite(adapter.lengthMm))) {
    return invalid('adapterMm', `an adapter of ${adapter.lengthMm} mm`, '0 mm or more');
  }
  if (!Number.isFinite(adapter.angleDeg)) return invalid('adapterAngleDeg', 'no angle', 'degrees from the handle');
  const reachMm = leverMm + adapter.lengthMm * cosine(adapter.angleDeg);
  if (reachMm >= leverMm * LEAST_SHARE) return ok(reachMm);
  return invalid(
    'adapterMm',
    `an adapter of ${adapter.lengthMm} mm at ${adapter.angleDeg}° on a lever of ${leverMm} mm puts the fastener under the hand`,
    'a shorter adapter, or one turned further out',
  );
}

/** Exactly 0 where the adapter stands square to the handle. */
const cosine = (angleDeg: number): number =>
  Math.abs(angleDeg % 180) === 90 ? 0 : Math.cos((angleDeg * Math.PI) / 180);
