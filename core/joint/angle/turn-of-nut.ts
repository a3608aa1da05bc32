/** Faces under head and nut that are not square to the bolt, sloped up to 1:20. */
export type SlopedFaces = 'none' | 'one' | 'both';

/** A turn from snug as a code tells it. */
export interface CodeTurn {
  readonly angleDeg: number;
  /** The row it stands in, in diameters d; signs, so that it reads alike in every language. */
  readonly row: string;
}

interface Row {
  readonly upTo: number;
  readonly none: number;
  readonly one: number;
  readonly both: number;
}

// RCSC Specification for Structural Joints Using High-Strength Bolts, table 8.2, turn from snug by bolt length in diameters (secondary table).
const RCSC_ROWS: readonly Row[] = [
  { upTo: 4, none: 120, one: 180, both: 240 },
  { upTo: 8, none: 180, one: 240, both: 300 },
  { upTo: 12, none: 240, one: 300, both: 360 },
];

// EN 1090-2, combined method, second step for 8.8 and 10.9 by thickness of the parts with washers in diameters (secondary table).
const EN_1090_2_ROWS = [
  { below: 2, angleDeg: 60 },
  { below: 6, angleDeg: 90 },
  { below: Infinity, angleDeg: 120 },
] as const;
const EN_1090_2_LONGEST = 10;

/** Lengths are compared with room for binary fractions and for rounding to thousandths of an inch. */
const SLACK = 1e-4;

/**
 * Turn from snug of a structural bolt.
 *
 * @param boltLengthMm nominal length of the bolt
 * @param boltMm       its diameter
 * @returns undefined beyond 12 diameters, where the turn is found by test
 * @source RCSC, table 8.2; the tolerance of the turn differs between editions and is not told here
 */
export function rcscTurn(boltLengthMm: number, boltMm: number, sloped: SlopedFaces): CodeTurn | undefined {
  const diameters = boltLengthMm / boltMm;
  const index = RCSC_ROWS.findIndex(({ upTo }) => diameters <= upTo + SLACK);
  const found = RCSC_ROWS[index];
  if (found === undefined) return undefined;
  const above = RCSC_ROWS[index - 1]?.upTo;
  const row = above === undefined ? `≤ ${found.upTo} d` : `> ${above} d, ≤ ${found.upTo} d`;
  return { angleDeg: found[sloped], row };
}

/**
 * Further turn of the combined method, after its first step by torque.
 *
 * @param thicknessMm clamped parts with packs and washers
 * @param boltMm      diameter of the bolt
 * @returns undefined beyond 10 diameters, where the turn is found by test
 * @source EN 1090-2, 8.5.4, table of the additional rotation; for 8.8 and 10.9
 */
export function en1090Turn(thicknessMm: number, boltMm: number): CodeTurn | undefined {
  const diameters = thicknessMm / boltMm;
  if (diameters > EN_1090_2_LONGEST + SLACK) return undefined;
  const index = EN_1090_2_ROWS.findIndex(({ below }) => diameters < below - SLACK);
  const found = EN_1090_2_ROWS[index];
  if (found === undefined) return undefined;
  const from = EN_1090_2_ROWS[index - 1]?.below;
  const end = found.below === Infinity ? `≤ ${EN_1090_2_LONGEST} d` : `< ${found.below} d`;
  return { angleDeg: found.angleDeg, row: from === undefined ? end : `≥ ${from} d, ${end}` };
}
