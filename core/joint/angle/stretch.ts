import type { BoltLaw, Strength } from './bolt-law.ts';

/** A length of the bolt that may yield. */
export interface YieldingSection {
  readonly lengthMm: number;
  /** A_S of thread, or the area of the shank. */
  readonly areaMm2: number;
  /** Equivalent over axial stress while the bolt is also twisted, 1 or more. */
  readonly twist: number;
}

/** A joint as the turning nut feels it. */
export interface Stretch {
  /** δ_S + δ_P. */
  readonly elasticMmPerN: number;
  /** Empty where no strength is known: elastic whatever the preload. */
  readonly sections: readonly YieldingSection[];
  readonly strength?: Strength | undefined;
  readonly law?: BoltLaw | undefined;
}

/**
 * Equivalent over axial stress of a bolt under tightening, stress over its plastic section.
 *
 * @param diameterMm      of the section
 * @param threadArmMm     thread torque over preload, mm
 * @source VDI 2230-1:2015, 5.5.2: τ/σ = 3·(M_G/F)/d_0, σ_red = σ·√(1 + 3·(τ/σ)²)
 */
export const twistOf = (diameterMm: number, threadArmMm: number): number =>
  Math.sqrt(1 + 3 * ((3 * threadArmMm) / diameterMm) ** 2);

/** How far nut and head have come nearer at a preload, mm. */
export function travelMm({ elasticMmPerN, sections, law }: Stretch, preloadN: number): number {
  const elasticMm = elasticMmPerN * preloadN;
  if (law === undefined) return elasticMm;
  return elasticMm + plasticMm(sections, law, preloadN);
}

/** Part of it that stays when the nut is loosened: the axial share of the flow under tension and torsion. */
const plasticMm = (sections: readonly YieldingSection[], law: BoltLaw, preloadN: number): number =>
  sections.reduce(
    (sum, { lengthMm, areaMm2, twist }) => sum + (lengthMm * law((preloadN * twist) / areaMm2)) / twist,
    0,
  );

/** Plastic share of the travel, mm. */
export const stayingMm = ({ sections, law }: Stretch, preloadN: number): number =>
  law === undefined ? 0 : plasticMm(sections, law, preloadN);

/** Preload at which the weakest section comes to a stress, N; infinite where no strength is known. */
export const preloadAtStressN = ({ sections }: Stretch, stressMPa: number): number =>
  Math.min(...sections.map(({ areaMm2, twist }) => (stressMPa * areaMm2) / twist));

export const yieldPreloadN = (stretch: Stretch): number =>
  stretch.strength === undefined ? Infinity : preloadAtStressN(stretch, stretch.strength.yieldMPa);

export const ultimatePreloadN = (stretch: Stretch): number =>
  stretch.strength === undefined ? Infinity : preloadAtStressN(stretch, stretch.strength.tensileMPa);

/** Rounds of halving; 60 exhaust a double. */
const HALVINGS = 60;

/**
 * The preload at a travel: the inverse of `travelMm`.
 *
 * @returns the preload, or the ultimate one when the travel goes beyond it
 */
export function preloadAtTravelN(stretch: Stretch, wantedMm: number): number {
  const elasticN = wantedMm / stretch.elasticMmPerN;
  if (stretch.law === undefined) return elasticN;
  let lowN = 0;
  let highN = Math.min(elasticN, ultimatePreloadN(stretch));
  if (travelMm(stretch, highN) <= wantedMm) return highN;
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middleN = (lowN + highN) / 2;
    if (travelMm(stretch, middleN) < wantedMm) lowN = middleN;
    else highN = middleN;
  }
  return highN;
}

/** Turning of the nut over a travel, degrees. */
export const turnDeg = (travelMm: number, pitchMm: number): number => (360 * travelMm) / pitchMm;

/** Travel of a turned nut, mm. */
export const travelOfTurnMm = (angleDeg: number, pitchMm: number): number => (pitchMm * angleDeg) / 360;
