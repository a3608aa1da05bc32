// Shigley's Mechanical Engineering Design, 9th ed., example 8-4, p. 443: 5/8-11 bolt, grip 1.5 in, half of it shank, cast iron
// of 14 Mpsi, washer face 1.5 d. Mlbf/in, C a plain number. Read in a copy.
export const EXAMPLE_8_4 = { bolt: '5.21', parts: '8.95', fit: '8.81', share: '0.368' } as const;

// Shigley, 9th ed., example 8-2, pp. 430-431: 1/2 in bolt, washer and steel 0.595 in on cast iron of 0.75 in, washer face
// 0.75 in. Diameters of the frusta, in, read in a copy; stiffnesses, Mlbf/in, from memory.
export const EXAMPLE_8_2_DIAMETERS = { atJoint: '1.437', atMiddle: '1.527' } as const;
export const EXAMPLE_8_2 = {
  steelAbove: '30.8',
  ironAbove: '285.5',
  ironBelow: '14.15',
  mixed: '9.378',
  steel: '14.64',
  steelFit: '14.92',
  bolt: '3.69',
} as const;

// Shigley, 9th ed., table 8-8, after Wileman, Choudhury and Green: A and B of k = E·d·A·exp(B·d/l). Read in a copy.
export const EXPONENTIAL_CONSTANTS = [
  ['steel', '0.78715', '0.62873'],
  ['aluminium', '0.79670', '0.63816'],
  ['copper', '0.79568', '0.63553'],
  ['grey cast iron', '0.77871', '0.61616'],
  ['any', '0.78952', '0.62914'],
] as const;

// Solutions to Shigley, chapter 8 (numbering of the 8th ed.): 8-19, halves of iron and steel under a 5/8 in bolt, Mlbf/in;
// 8-20, M12 bolt with 30 mm shank and 15 mm thread, MN/m; 8-38, 3/8 in rod of 13.5 in, Mlbf/in. Read in a copy.
export const SOLUTIONS = { iron: '9.12', steel: '19.18', halves: '12.4', m12: '466.8', rod: '0.245' } as const;

// VDI 2230-1:2015, (5.1/23) to (5.1/30), worked by hand: M12, grip 40, shank 20, bearing circle 16.63, hole 13.5, parts 40 wide,
// E 205 000; embedding 9.5 µm. tan φ; δ_S, δ_P mm/N; F_Z kN; kN/mm; kN a degree.
export const M12_BY_HAND = {
  tangent: '0.5022',
  bolt: '2.9918e-6',
  parts: '6.839e-7',
  embedding: '2.58',
  stiffness: '272.1',
  perDegree: '1.323',
} as const;

// VDI 2230-1, worked example in a guide to its reference values: M12 8.8, friction 0.14, greatest preload 41.9 kN, factor
// 1.8; least preload, kN. Read in a copy.
export const LEAST_PRELOAD = '23.3';
