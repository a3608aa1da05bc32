/** Basic profile of a thread and the shear strength on both sides of it. */
export interface EngagedThread {
  readonly majorMm: number;
  readonly pitchMm: number;
  readonly pitchDiameterMm: number;
  readonly minorMm: number;
  readonly boltShearMPa: number;
  readonly innerShearMPa: number;
  /** Across flats of a nut; absent in a tapped part, which does not widen. */
  readonly acrossFlatsMm?: number | undefined;
}

const TAN_FLANK = Math.tan(Math.PI / 6);

/** Shear areas for a millimetre of engagement, mm: of the inner thread and of the bolt's. */
const areasPerMm = ({ majorMm, pitchMm, pitchDiameterMm, minorMm }: EngagedThread) => ({
  innerMm: ((Math.PI * majorMm) / pitchMm) * (pitchMm / 2 + (majorMm - pitchDiameterMm) * TAN_FLANK),
  boltMm: ((Math.PI * minorMm) / pitchMm) * (pitchMm / 2 + (pitchDiameterMm - minorMm) * TAN_FLANK),
});

/** A nut is pressed open: less thread bears. */
function wideningFactor(acrossFlatsMm: number | undefined, majorMm: number): number {
  if (acrossFlatsMm === undefined) return 1;
  const width = Math.min(Math.max(acrossFlatsMm / majorMm, 1.4), 1.9);
  return 3.8 * width - width ** 2 - 2.61;
}

/** The weaker thread bends the stronger one; both bear less. */
function bendingFactors(strengthRatio: number): { readonly bolt: number; readonly inner: number } {
  const r = Math.min(Math.max(strengthRatio, 0.4), 2.2);
  return {
    bolt: r <= 1 ? 0.897 : 5.594 - 13.682 * r + 14.107 * r ** 2 - 6.057 * r ** 3 + 0.9353 * r ** 4,
    inner: r >= 1 ? 0.897 : 0.728 + 1.769 * r - 2.896 * r ** 2 + 1.296 * r ** 3,
  };
}

/** Force that a millimetre of engaged thread bears before it strips. */
interface StrippingPerMm {
  readonly boltNPerMm: number;
  readonly innerNPerMm: number;
}

function perMm(thread: EngagedThread): StrippingPerMm {
  const { boltMm, innerMm } = areasPerMm(thread);
  const ratio = (thread.innerShearMPa * innerMm) / (thread.boltShearMPa * boltMm);
  const widening = wideningFactor(thread.acrossFlatsMm, thread.majorMm);
  const bending = bendingFactors(ratio);
  return {
    boltNPerMm: thread.boltShearMPa * boltMm * widening * bending.bolt,
    innerNPerMm: thread.innerShearMPa * innerMm * widening * bending.inner,
  };
}

/** Threads near the end carry nothing. */
const IDLE_PITCHES = 0.8;

/** Which thread gives first, and at which force. */
export interface Stripping {
  readonly loadN: number;
  readonly first: 'bolt thread' | 'inner thread';
}

/**
 * Force at which the engaged threads strip, N.
 *
 * @param thread       basic profile; at the limits of tolerance the areas are smaller
 * @param engagementMm length over which the threads engage
 * @source VDI 2230-1:2015, (5.5/42) to (5.5/47), after Alexander, SAE 770420 (1977) (formulas from a secondary source)
 */
export function strippingLoad(thread: EngagedThread, engagementMm: number): Stripping {
  const bearingMm = Math.max(0, engagementMm - IDLE_PITCHES * thread.pitchMm);
  const { boltNPerMm, innerNPerMm } = perMm(thread);
  return {
    loadN: bearingMm * Math.min(boltNPerMm, innerNPerMm),
    first: boltNPerMm < innerNPerMm ? 'bolt thread' : 'inner thread',
  };
}

/**
 * Engagement from which on the bolt breaks before its thread strips, mm.
 *
 * @source VDI 2230-1:2015, (5.5/48)
 */
export function neededEngagementMm(thread: EngagedThread, breakingLoadN: number): number {
  const { boltNPerMm, innerNPerMm } = perMm(thread);
  return breakingLoadN / Math.min(boltNPerMm, innerNPerMm) + IDLE_PITCHES * thread.pitchMm;
}
