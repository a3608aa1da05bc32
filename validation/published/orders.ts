// ASME PCC-1, legacy cross pattern, bolts numbered clockwise. From memory.
export const CROSS_ORDERS: readonly string[] = [
  '1 3 2 4',
  '1 9 5 13 3 11 7 15 2 10 6 14 4 12 8 16',
  '1 11 6 16 3 13 8 18 5 15 10 20 2 12 7 17 4 14 9 19',
  '1 13 7 19 4 16 10 22 2 14 8 20 5 17 11 23 3 15 9 21 6 18 12 24',
  '1 15 8 22 4 18 11 25 6 20 13 27 2 16 9 23 5 19 12 26 7 21 14 28 3 17 10 24',
  '1 17 9 25 5 21 13 29 3 19 11 27 7 23 15 31 2 18 10 26 6 22 14 30 4 20 12 28 8 24 16 32',
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
