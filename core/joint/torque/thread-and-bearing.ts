/** What a tightened fastener turns on: its thread, the weakest section of its shank, and the ring under head or nut. */
export interface ThreadAndBearing {
  readonly majorDiameterMm: number;
  readonly pitchMm: number;
  readonly pitchDiameterMm: number;
  /** Diameter of the section that is twisted and stretched: of the stress area, or of a thinner shank. */
  readonly sectionDiameterMm: number;
  readonly bearingOuterMm: number;
  readonly holeMm: number;
}

/** Coefficients of friction, each in (0, 1]. */
export interface Friction {
  readonly thread: number;
  readonly bearing: number;
}

/** Half the flank angle of metric and Unified threads is 30°. */
export const COS_HALF_FLANK = Math.sqrt(3) / 2;

/** Torque over preload, mm: what the pitch, the friction of the thread and that of the bearing face take of it. */
export interface TorqueArms {
  readonly pitchMm: number;
  readonly threadMm: number;
  readonly bearingMm: number;
}

/** @source ISO 16047:2005, D_b = (D_o + d_h)/2; VDI 2230-1:2015, D_Km */
export const meanBearingDiameterMm = ({ bearingOuterMm, holeMm }: ThreadAndBearing): number =>
  (bearingOuterMm + holeMm) / 2;

/**
 * Long form of the torque equation, term by term.
 *
 * @source ISO 16047:2005; VDI 2230-1:2015, assembly torque: T/F = P/(2π) + μ_G·d2/(2·cos 30°) + μ_K·D_Km/2
 */
export const torqueArms = (geometry: ThreadAndBearing, friction: Friction): TorqueArms => ({
  pitchMm: geometry.pitchMm / (2 * Math.PI),
  threadMm: (friction.thread * geometry.pitchDiameterMm) / (2 * COS_HALF_FLANK),
  bearingMm: (friction.bearing * meanBearingDiameterMm(geometry)) / 2,
});

export const wholeArmMm = ({ pitchMm, threadMm, bearingMm }: TorqueArms): number => pitchMm + threadMm + bearingMm;
