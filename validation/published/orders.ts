// ASME PCC-1, legacy cross pattern, bolts numbered clockwise. From memory.
export const CROSS_ORDERS: readonly string[] = [
  '1 3 2 4',
  '1 9 5 13 3 11 7 15 2 10 6 14 4 12 8 16',
  '1 11 6 16 3 13 8 18 5 15 10 20 2 12 7 17 4 14 9 19',
  '1 13 7 19 4 16 10 22 2 14 8 20 5 17 11 23 3 15 9 21 6 18 12 24',
  '1 15 8 22 4 18 11 25 6 20 13 27 2 16 9 23 5 19 12 26 7 21 14 28 3 17 10 24',
  '1 17 9 25 5 21 13 29 3 19 11 27 7 23 15 31 2 18 10 26 6 22 14 30 4 20 12 28 8 24 16 32',
];

// The same for a single tool on large flanges: neighbours taken as one by threes or fours. Of 48 the grouping was read, that
// group 7 comes after group 1 too; the lists from memory.
export const NEIGHBOUR_ORDERS: readonly (readonly [neighbours: number, order: string])[] = [
  [
    3,
    '1 2 3 19 20 21 10 11 12 28 29 30 4 5 6 22 23 24 13 14 15 31 32 33 7 8 9 25 26 27 16 17 18 34 35 36',
  ],
  [
    4,
    '1 2 3 4 21 22 23 24 13 14 15 16 33 34 35 36 5 6 7 8 25 26 27 28 17 18 19 20 37 38 39 40 9 10 11 12 29 30 31 32',
  ],
  [
    4,
    '1 2 3 4 25 26 27 28 13 14 15 16 37 38 39 40 5 6 7 8 29 30 31 32 17 18 19 20 41 42 43 44 9 10 11 12 33 34 35 36 21 22 23 24',
  ],
  [
    4,
    '1 2 3 4 25 26 27 28 13 14 15 16 37 38 39 40 5 6 7 8 29 30 31 32 17 18 19 20 41 42 43 44 9 10 11 12 33 34 35 36 21 22 23 24 45 46 47 48',
  ],
];

/** Percent of the target in each round of a flange, and how the last round goes. */
export interface Schedule {
  readonly source: string;
  readonly percents: readonly number[];
  readonly closing: 'circular' | 'star';
}

// Read: a page on the sequence of flange bolts; a page on bolting flanges; a gasket maker’s work sheet.
export const SCHEDULES_READ: readonly Schedule[] = [
  { source: 'sequence of flange bolts', percents: [30, 60, 100], closing: 'star' },
  { source: 'how to bolt flanges', percents: [30, 60, 100], closing: 'circular' },
  { source: 'work sheet for gaskets', percents: [25, 50, 100], closing: 'circular' },
];

// ASME PCC-1, legacy rounds: percent of the target from and to, then round the circle at the whole. From memory.
export const PCC_1_ROUNDS: readonly (readonly [from: number, to: number])[] = [
  [20, 30],
  [50, 70],
  [100, 100],
];

// The same orders as the number painted at each position, clockwise from the first. From memory.
export const PAINTED_LABELS: readonly string[] = [
  '1 3 2 4',
  '1 9 5 13 3 11 7 15 2 10 6 14 4 12 8 16',
  '1 13 5 17 9 3 15 7 19 11 2 14 6 18 10 4 16 8 20 12',
  '1 9 17 5 13 21 3 11 19 7 15 23 2 10 18 6 14 22 4 12 20 8 16 24',
  '1 13 25 5 17 9 21 3 15 27 7 19 11 23 2 14 26 6 18 10 22 4 16 28 8 20 12 24',
  '1 17 9 25 5 21 13 29 3 19 11 27 7 23 15 31 2 18 10 26 6 22 14 30 4 20 12 28 8 24 16 32',
];

// Eight bolts in a maintenance manual, p. 12; twelve in a secondary table. Both equal the legacy cross pattern. Read.
export const CROSS_ORDERS_READ: readonly string[] = [
  '1 5 3 7 2 6 4 8',
  '1 7 4 10 2 8 5 11 3 9 6 12',
];

export const PAINTED_LABELS_READ: readonly string[] = [
  '1 5 3 7 2 6 4 8',
  '1 5 9 3 7 11 2 6 10 4 8 12',
];
