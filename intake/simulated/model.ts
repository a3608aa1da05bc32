/** Mean and relative standard deviation of a coefficient of friction from fastener to fastener. */
export interface FrictionScatter {
  readonly mean: number;
  readonly relativeDeviation: number;
}

/** The joint as the wrench feels it. */
export interface JointModel {
  readonly pitchMm: number;
  readonly pitchDiameterMm: number;
  /** Mean diameter of the ring on which head or nut rubs, mm. */
  readonly meanBearingDiameterMm: number;
  readonly threadFriction: FrictionScatter;
  readonly bearingFriction: FrictionScatter;
  /** At rest, friction is so many times what it is in motion. */
  readonly breakAwayRatio: number;
  /** Fastener and clamped parts in series, N/mm. */
  readonly stiffnessNPerMm: number;
  /** Turning over which the parts come together and the slope grows to its full value, degrees. */
  readonly alignmentDeg: number;
  /** Preload at which the fastener begins to yield, N. */
  readonly yieldPreloadN: number;
  /** Slope that is left long after yield, as a share of the elastic slope. */
  readonly plasticShare: number;
  /** Turning over which the slope falls from elastic to plastic, degrees (decay constant). */
  readonly plasticSpanDeg: number;
  /** Torque that a locking element takes while nothing is clamped, N·m. */
  readonly prevailingNm: number;
  /** Mean turning before the parts touch, degrees. */
  readonly freeRunDeg: number;
}

/** The wrench as an instrument. */
export interface WrenchModel {
  readonly resolutionNm: number;
  readonly angleResolutionDeg: number;
  /** Standard deviation of one torque sample, N·m. */
  readonly noiseNm: number;
  readonly sampleHz: number;
  /** Torsion of head and handle. The wrench knows it and takes it out of the angle it shows, N·m a degree. */
  readonly stiffnessNmPerDeg: number;
  /** Torsion of the extension, of which the wrench knows nothing, N·m a degree. */
  readonly extensionStiffnessNmPerDeg: number | undefined;
  /** Torque at the fastener over torque shown: 1 without an adapter. */
  readonly fastenerOverShown: number;
  /** Torque shown from which angle is counted when the pull does not say, N·m. */
  readonly angleFromNm: number;
}

/** The hand on the wrench. The scatters are *common practice* for somebody who watches the display. */
export interface HandModel {
  readonly speedDegPerS: number;
  readonly relativeSpeedDeviation: number;
  /** Turning of one ratchet stroke, degrees. */
  readonly strokeDeg: number;
  /** Time to swing back between two strokes, s. */
  readonly swingBackS: number;
  /** Standard deviation with which a torque is hit, as a share of it. */
  readonly relativeTorqueDeviation: number;
  /** Standard deviation with which an angle is hit, degrees. */
  readonly angleDeviationDeg: number;
}

export interface SimulatedModel {
  readonly joint: JointModel;
  readonly wrench: WrenchModel;
  readonly hand: HandModel;
}

/** What the wrench shall show at the end of the pull. With an angle the hand stops by it, and torque is what comes of it. */
export type Aim = {
  /** Torque shown from which the wrench counts angle, N·m; left out: its own. */
  readonly angleFromNm?: number | undefined;
  readonly speedLimitDegPerS?: number | undefined;
} & (
  | { readonly torqueNm: number; readonly angleDeg?: number | undefined }
  | { readonly torqueNm?: number | undefined; readonly angleDeg: number }
);
