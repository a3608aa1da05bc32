/** Stress areas as printed, square inches: thread, area. */
type Areas = readonly (readonly [thread: string, areaIn2: string])[];

// Shigley's Mechanical Engineering Design, 9th ed., table 8-2, from ANSI B1.1-1974, p. 413. Read.
export const SHIGLEY_AREAS: Areas = [
  ['#4-40 UNC', '0.00604'],
  ['#5-40 UNC', '0.00796'],
  ['#6-40 UNF', '0.01015'],
  ['#8-32 UNC', '0.0140'],
  ['#8-36 UNF', '0.01474'],
  ['#10-24 UNC', '0.0175'],
  ['#10-32 UNF', '0.0200'],
  ['#12-24 UNC', '0.0242'],
  ['5/16-18 UNC', '0.0524'],
  ['3/8-16 UNC', '0.0775'],
  ['3/8-24 UNF', '0.0878'],
  ['7/16-20 UNF', '0.1187'],
  ['1/2-13 UNC', '0.1419'],
  ['1/2-20 UNF', '0.1599'],
  ['9/16-18 UNF', '0.203'],
  ['5/8-11 UNC', '0.226'],
  ['5/8-18 UNF', '0.256'],
  ['3/4-10 UNC', '0.334'],
  ['3/4-16 UNF', '0.373'],
  ['7/8-9 UNC', '0.462'],
  ['7/8-14 UNF', '0.509'],
  ['1-8 UNC', '0.606'],
  ['1-12 UNF', '0.663'],
  ['1 1/4-7 UNC', '0.969'],
  ['1 1/4-12 UNF', '1.073'],
  ['1 1/2-6 UNC', '1.405'],
  ['1 1/2-12 UNF', '1.581'],
];

// Dimensions of UNF threads (secondary table).
export const UNF_AREAS: Areas = [
  ['1 1/8-12 UNF', '0.856'],
  ['1 3/8-12 UNF', '1.315'],
];

// Internal UNC threads, class 2B (secondary table).
export const UNC_AREAS: Areas = [
  ['1 1/8-7 UNC', '0.763'],
  ['1 3/8-6 UNC', '1.16'],
  ['1 3/4-5 UNC', '1.9'],
  ['2-4.5 UNC', '2.5'],
  ['2 1/4-4.5 UNC', '3.25'],
  ['2 1/2-4 UNC', '4.0'],
  ['2 3/4-4 UNC', '4.93'],
];

// Basic pitch diameters of UNC threads, inches (secondary table).
export const UNC_PITCH_DIAMETERS: readonly (readonly [thread: string, d2In: string])[] = [
  ['1/4-20 UNC', '0.2175'],
  ['5/16-18 UNC', '0.2764'],
  ['3/8-16 UNC', '0.3344'],
  ['7/16-14 UNC', '0.3911'],
  ['1/2-13 UNC', '0.4500'],
  ['9/16-12 UNC', '0.5084'],
  ['5/8-11 UNC', '0.5660'],
  ['3/4-10 UNC', '0.6850'],
  ['1-8 UNC', '0.9188'],
  ['1 1/8-7 UNC', '1.0322'],
  ['1 3/8-6 UNC', '1.2667'],
  ['1 3/4-5 UNC', '1.6201'],
  ['2-4.5 UNC', '1.8557'],
];
