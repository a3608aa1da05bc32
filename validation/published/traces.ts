// Curves as closed formulas; their answers worked by hand from the formulas.

/** 4 N·m to 90°; 4 + 1.6 (θ-90)²/60 to 120°; 28 + 1.6 (θ-120) to 190°; then 140 + 1.6 (0.15 u + 10.2 (1 - e^(-u/12))), u = θ-190. */
export const TIGHTENING = {
  slope: '1.600000000',
  snugDeg: '105.000000',
  originDeg: '102.500000',
  clampOriginDeg: '105.000000',
  prevailing: '4.000',
  peak: '165.338',
  /** Slope 1.6 (0.15 + 0.85 e^(-u/12)) is 0.8 at u = 12 ln(0.85/0.35). */
  yieldDeg: '200.648',
  /** 0.85 (u - 12 (1 - e^(-u/12))) = 8 at u = 18.935. */
  offsetYieldDeg: '208.935',
  from10Deg: '75.38',
  from50Deg: '40.62',
} as const;

/** 14 N·m a degree to 112 at 8°, down to 104 at 8.5°, then 1.6 N·m a degree. */
export const RESTART = { meet: '102.06', meetDeg: '7.290', staticPeak: '112.0', after: '106.4', afterDeg: 2.71 } as const;

/** ISO 5393:2017, joint rate from 10 % to 100 % of the torque: hard up to 27°, soft from 324°. Two secondary accounts agree. */
export const JOINT_RATES: readonly (readonly [turnDeg: number, kind: string, from10: string])[] = [
  [30, 'hard', '27.0'],
  [60, 'medium', '54.0'],
  [360, 'soft', '324.0'],
];
