import type { Provenance } from './provenance.ts';

/** One nominal diameter of the ISO metric thread, mm. `fine` are all other pitches, largest first. */
export interface MetricRow {
  readonly majorMm: number;
  readonly coarseMm?: number;
  readonly fineMm: readonly number[];
  readonly had: Provenance;
}

// ISO 261:1998, table 2, M1.6 to M64 (fine pitches beside the usual ones from memory); ISO 262:1998, the part of it
// for screws, bolts and nuts (secondary table, read).
// M6x0.5 is not in ISO 261; tables of taps have it.
export const METRIC_ROWS: readonly MetricRow[] = [
  { majorMm: 1.6, coarseMm: 0.35, fineMm: [0.2], had: 'from memory' },
  { majorMm: 1.8, coarseMm: 0.35, fineMm: [0.2], had: 'from memory' },
  { majorMm: 2, coarseMm: 0.4, fineMm: [0.25], had: 'from memory' },
  { majorMm: 2.2, coarseMm: 0.45, fineMm: [0.25], had: 'from memory' },
  { majorMm: 2.5, coarseMm: 0.45, fineMm: [0.35], had: 'from memory' },
  { majorMm: 3, coarseMm: 0.5, fineMm: [0.35], had: 'read' },
  { majorMm: 3.5, coarseMm: 0.6, fineMm: [0.35], had: 'read' },
  { majorMm: 4, coarseMm: 0.7, fineMm: [0.5], had: 'read' },
  { majorMm: 4.5, coarseMm: 0.75, fineMm: [0.5], had: 'from memory' },
  { majorMm: 5, coarseMm: 0.8, fineMm: [0.5], had: 'read' },
  { majorMm: 5.5, fineMm: [0.5], had: 'from memory' },
  { majorMm: 6, coarseMm: 1, fineMm: [0.75, 0.5], had: 'read' },
  { majorMm: 7, coarseMm: 1, fineMm: [0.75], had: 'read' },
  { majorMm: 8, coarseMm: 1.25, fineMm: [1, 0.75], had: 'read' },
  { majorMm: 9, coarseMm: 1.25, fineMm: [1, 0.75], had: 'from memory' },
  { majorMm: 10, coarseMm: 1.5, fineMm: [1.25, 1, 0.75], had: 'read' },
  { majorMm: 11, coarseMm: 1.5, fineMm: [1, 0.75], had: 'from memory' },
  { majorMm: 12, coarseMm: 1.75, fineMm: [1.5, 1.25, 1], had: 'read' },
  { majorMm: 14, coarseMm: 2, fineMm: [1.5, 1.25, 1], had: 'read' },
  { majorMm: 15, fineMm: [1.5, 1], had: 'from memory' },
  { majorMm: 16, coarseMm: 2, fineMm: [1.5, 1], had: 'read' },
  { majorMm: 17, fineMm: [1.5, 1], had: 'from memory' },
  { majorMm: 18, coarseMm: 2.5, fineMm: [2, 1.5, 1], had: 'read' },
  { majorMm: 20, coarseMm: 2.5, fineMm: [2, 1.5, 1], had: 'read' },
  { majorMm: 22, coarseMm: 2.5, fineMm: [2, 1.5, 1], had: 'read' },
  { majorMm: 24, coarseMm: 3, fineMm: [2, 1.5, 1], had: 'read' },
  { majorMm: 25, fineMm: [2, 1.5, 1], had: 'from memory' },
  { majorMm: 26, fineMm: [1.5], had: 'from memory' },
  { majorMm: 27, coarseMm: 3, fineMm: [2, 1.5, 1], had: 'read' },
  { majorMm: 28, fineMm: [2, 1.5, 1], had: 'from memory' },
  { majorMm: 30, coarseMm: 3.5, fineMm: [3, 2, 1.5, 1], had: 'read' },
  { majorMm: 32, fineMm: [2, 1.5], had: 'from memory' },
  { majorMm: 33, coarseMm: 3.5, fineMm: [3, 2, 1.5], had: 'read' },
  { majorMm: 35, fineMm: [1.5], had: 'from memory' },
  { majorMm: 36, coarseMm: 4, fineMm: [3, 2, 1.5], had: 'read' },
  { majorMm: 38, fineMm: [1.5], had: 'from memory' },
  { majorMm: 39, coarseMm: 4, fineMm: [3, 2, 1.5], had: 'read' },
  { majorMm: 40, fineMm: [3, 2, 1.5], had: 'from memory' },
  { majorMm: 42, coarseMm: 4.5, fineMm: [4, 3, 2, 1.5], had: 'read' },
  { majorMm: 45, coarseMm: 4.5, fineMm: [4, 3, 2, 1.5], had: 'read' },
  { majorMm: 48, coarseMm: 5, fineMm: [4, 3, 2, 1.5], had: 'read' },
  { majorMm: 50, fineMm: [3, 2, 1.5], had: 'from memory' },
  { majorMm: 52, coarseMm: 5, fineMm: [4, 3, 2, 1.5], had: 'read' },
  { majorMm: 55, fineMm: [4, 3, 2, 1.5], had: 'from memory' },
  { majorMm: 56, coarseMm: 5.5, fineMm: [4, 3, 2, 1.5], had: 'read' },
  { majorMm: 58, fineMm: [4, 3, 2, 1.5], had: 'from memory' },
  { majorMm: 60, coarseMm: 5.5, fineMm: [4, 3, 2, 1.5], had: 'read' },
  { majorMm: 62, fineMm: [4, 3, 2, 1.5], had: 'from memory' },
  { majorMm: 64, coarseMm: 6, fineMm: [4, 3, 2, 1.5], had: 'read' },
];
