import type { Provenance } from './provenance.ts';

/** Holes that a bolt of metric size goes through, mm. */
export interface MetricHoleRow {
  readonly threadMm: number;
  readonly fineMm: number;
  readonly mediumMm: number;
  readonly coarseMm: number;
  readonly had: Provenance;
}

// ISO 273:1979, clearance holes, series fine H12, medium H13, coarse H14 (secondary table, read to M16; others from memory).
export const METRIC_HOLES: readonly MetricHoleRow[] = [
  { threadMm: 1.6, fineMm: 1.7, mediumMm: 1.8, coarseMm: 2, had: 'read' },
  { threadMm: 1.8, fineMm: 2, mediumMm: 2.1, coarseMm: 2.2, had: 'from memory' },
  { threadMm: 2, fineMm: 2.2, mediumMm: 2.4, coarseMm: 2.6, had: 'read' },
  { threadMm: 2.5, fineMm: 2.7, mediumMm: 2.9, coarseMm: 3.1, had: 'read' },
  { threadMm: 3, fineMm: 3.2, mediumMm: 3.4, coarseMm: 3.6, had: 'read' },
  { threadMm: 3.5, fineMm: 3.7, mediumMm: 3.9, coarseMm: 4.2, had: 'read' },
  { threadMm: 4, fineMm: 4.3, mediumMm: 4.5, coarseMm: 4.8, had: 'read' },
  { threadMm: 4.5, fineMm: 4.8, mediumMm: 5, coarseMm: 5.3, had: 'from memory' },
  { threadMm: 5, fineMm: 5.3, mediumMm: 5.5, coarseMm: 5.8, had: 'read' },
  { threadMm: 6, fineMm: 6.4, mediumMm: 6.6, coarseMm: 7, had: 'read' },
  { threadMm: 7, fineMm: 7.4, mediumMm: 7.6, coarseMm: 8, had: 'read' },
  { threadMm: 8, fineMm: 8.4, mediumMm: 9, coarseMm: 10, had: 'read' },
  { threadMm: 10, fineMm: 10.5, mediumMm: 11, coarseMm: 12, had: 'read' },
  { threadMm: 12, fineMm: 13, mediumMm: 13.5, coarseMm: 14.5, had: 'read' },
  { threadMm: 14, fineMm: 15, mediumMm: 15.5, coarseMm: 16.5, had: 'read' },
  { threadMm: 16, fineMm: 17, mediumMm: 17.5, coarseMm: 18.5, had: 'read' },
  { threadMm: 18, fineMm: 19, mediumMm: 20, coarseMm: 21, had: 'from memory' },
  { threadMm: 20, fineMm: 21, mediumMm: 22, coarseMm: 24, had: 'from memory' },
  { threadMm: 22, fineMm: 23, mediumMm: 24, coarseMm: 26, had: 'from memory' },
  { threadMm: 24, fineMm: 25, mediumMm: 26, coarseMm: 28, had: 'from memory' },
  { threadMm: 27, fineMm: 28, mediumMm: 30, coarseMm: 32, had: 'from memory' },
  { threadMm: 30, fineMm: 31, mediumMm: 33, coarseMm: 35, had: 'from memory' },
  { threadMm: 33, fineMm: 34, mediumMm: 36, coarseMm: 38, had: 'from memory' },
  { threadMm: 36, fineMm: 37, mediumMm: 39, coarseMm: 42, had: 'from memory' },
  { threadMm: 39, fineMm: 40, mediumMm: 42, coarseMm: 45, had: 'from memory' },
  { threadMm: 42, fineMm: 43, mediumMm: 45, coarseMm: 48, had: 'from memory' },
  { threadMm: 45, fineMm: 46, mediumMm: 48, coarseMm: 52, had: 'from memory' },
  { threadMm: 48, fineMm: 50, mediumMm: 52, coarseMm: 56, had: 'from memory' },
  { threadMm: 52, fineMm: 54, mediumMm: 56, coarseMm: 62, had: 'from memory' },
  { threadMm: 56, fineMm: 58, mediumMm: 62, coarseMm: 66, had: 'from memory' },
  { threadMm: 60, fineMm: 62, mediumMm: 66, coarseMm: 70, had: 'from memory' },
  { threadMm: 64, fineMm: 66, mediumMm: 70, coarseMm: 74, had: 'from memory' },
];

/** Hole that a bolt of inch size goes through, in. */
export interface InchHoleRow {
  readonly size: string;
  readonly normalIn: number;
  readonly had: Provenance;
}

// ASME B18.2.8-1999, clearance holes, normal fit, to 1 1/2 in (from memory); above, 1/8 in more than the stud, as the holes of
// flanges to ASME B16.5 (common practice).
export const INCH_HOLES: readonly InchHoleRow[] = [
  { size: '1/4', normalIn: 0.28125, had: 'from memory' },
  { size: '5/16', normalIn: 0.34375, had: 'from memory' },
  { size: '3/8', normalIn: 0.40625, had: 'from memory' },
  { size: '7/16', normalIn: 0.46875, had: 'from memory' },
  { size: '1/2', normalIn: 0.5625, had: 'from memory' },
  { size: '9/16', normalIn: 0.625, had: 'common practice' },
  { size: '5/8', normalIn: 0.6875, had: 'from memory' },
  { size: '3/4', normalIn: 0.8125, had: 'from memory' },
  { size: '7/8', normalIn: 0.9375, had: 'from memory' },
  { size: '1', normalIn: 1.09375, had: 'from memory' },
  { size: '1 1/8', normalIn: 1.21875, had: 'from memory' },
  { size: '1 1/4', normalIn: 1.34375, had: 'from memory' },
  { size: '1 3/8', normalIn: 1.5, had: 'from memory' },
  { size: '1 1/2', normalIn: 1.625, had: 'from memory' },
  { size: '1 5/8', normalIn: 1.75, had: 'common practice' },
  { size: '1 3/4', normalIn: 1.875, had: 'common practice' },
  { size: '1 7/8', normalIn: 2.0, had: 'common practice' },
  { size: '2', normalIn: 2.125, had: 'common practice' },
  { size: '2 1/4', normalIn: 2.375, had: 'common practice' },
  { size: '2 1/2', normalIn: 2.625, had: 'common practice' },
  { size: '2 3/4', normalIn: 2.875, had: 'common practice' },
  { size: '3', normalIn: 3.125, had: 'common practice' },
];
