/**
 * How far an extension twists while the torque rises: the wrench turns so much further than the fastener.
 *
 * @param torqueNm          torque at the end of the pull
 * @param fromNm            torque from which angle was counted; a pull that stayed below it wound nothing up
 * @param stiffnessNmPerDeg torsional stiffness of the extension, above 0
 * @returns degrees, 0 or more
 * @source torsion of a bar, elastic
 */
export const windUpDeg = (torqueNm: number, fromNm: number, stiffnessNmPerDeg: number): number =>
  Math.max(0, torqueNm - fromNm) / stiffnessNmPerDeg;
