/** Turns from snug, degrees: length in diameters, then with no, one, both faces sloped. */
type Turns = readonly (readonly [diameters: number, none: string, one: string, both: string])[];

// RCSC Specification, table 8.2, each row at its lower and its upper end (secondary table, read).
export const RCSC_TURNS: Turns = [
  [1, '120', '180', '240'],
  [4, '120', '180', '240'],
  [4.01, '180', '240', '300'],
  [8, '180', '240', '300'],
  [8.01, '240', '300', '360'],
  [12, '240', '300', '360'],
];

// Table of lengths for turn-of-nut, flat faces: diameter and length, in; degrees. Read. Lengths over 8 d at 1 in and larger
// slip there from 8 to 12 d to 9 to 15 d and are left out.
export const RCSC_LENGTHS = [
  [0.5, 2, '120'],
  [0.5, 4, '180'],
  [0.5, 4.01, '240'],
  [0.75, 3, '120'],
  [0.875, 3.5, '120'],
  [1, 4, '120'],
  [1, 4.01, '180'],
] as const;

// Rotational capacity test of structural bolts after ASTM and FHWA, a county's record: twice the turn of installation, at the
// upper end of each row; degrees. Read.
export const ROTATIONAL_CAPACITY = [
  [4, '240'],
  [8, '360'],
  [12, '480'],
] as const;

// EN 1090-2, combined method, second step, thickness in diameters; degrees. Read in a guide to washers, which prints the first
// row as “t > 2d” where it must be less.
export const EN_1090_2_TURNS = [
  [1.99, '60'],
  [2, '90'],
  [5.99, '90'],
  [6, '120'],
  [10, '120'],
] as const;

// MIL-HDBK-60, its formulas worked by hand. Turn for 90 ksi over 6 in at 0.1 in lead, E 30 Mpsi, degrees; length L_B of a
// 1/2 in bolt with 1 in shank in a joint of 2 in, in.
export const BOLT_ALONE = { turn: '64.8', length: '2.05493' } as const;

// θ = 360·ΔF·(1/k_b + 1/k_m)/P with the printed stiffnesses of Shigley's examples 8-4 and 8-2, worked by hand; degrees.
export const TURNS_BY_HAND = { example84: '17.317', example82: '24.882' } as const;

// Torsion of steel bars, G 79 300 MPa, worked by hand: N·m a degree, and degrees at a torque.
export const WIND_UP = { thin: '14.139', thinAt100: '7.07', thick: '44.737', thickAt400: '8.94', square: '337.5' } as const;
