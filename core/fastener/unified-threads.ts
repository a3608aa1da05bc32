import type { Provenance } from './provenance.ts';

/** One size of the Unified inch thread: basic major diameter in inches, threads to the inch of each series. */
export interface UnifiedRow {
  readonly size: string;
  readonly majorIn: number;
  readonly unc?: number;
  readonly unf?: number;
  /** Eight threads to the inch where UNC has fewer; at 1 in UNC is that thread already. */
  readonly un8?: number;
  readonly had: Provenance;
}

// ASME B1.1-2003, standard series UNC, UNF and 8-UN to 4 in: UNC and UNF as in Shigley, 9th ed., table 8-2 (read), sizes
// below #4, UNC above 1 1/2 in from copies of its tables; the sizes of the 8-UN series from memory.
export const UNIFIED_ROWS: readonly UnifiedRow[] = [
  { size: '#0', majorIn: 0.06, unf: 80, had: 'from memory' },
  { size: '#1', majorIn: 0.073, unc: 64, unf: 72, had: 'from memory' },
  { size: '#2', majorIn: 0.086, unc: 56, unf: 64, had: 'from memory' },
  { size: '#3', majorIn: 0.099, unc: 48, unf: 56, had: 'from memory' },
  { size: '#4', majorIn: 0.112, unc: 40, unf: 48, had: 'read' },
  { size: '#5', majorIn: 0.125, unc: 40, unf: 44, had: 'read' },
  { size: '#6', majorIn: 0.138, unc: 32, unf: 40, had: 'read' },
  { size: '#8', majorIn: 0.164, unc: 32, unf: 36, had: 'read' },
  { size: '#10', majorIn: 0.19, unc: 24, unf: 32, had: 'read' },
  { size: '#12', majorIn: 0.216, unc: 24, unf: 28, had: 'read' },
  { size: '1/4', majorIn: 0.25, unc: 20, unf: 28, had: 'read' },
  { size: '5/16', majorIn: 0.3125, unc: 18, unf: 24, had: 'read' },
  { size: '3/8', majorIn: 0.375, unc: 16, unf: 24, had: 'read' },
  { size: '7/16', majorIn: 0.4375, unc: 14, unf: 20, had: 'read' },
  { size: '1/2', majorIn: 0.5, unc: 13, unf: 20, had: 'read' },
  { size: '9/16', majorIn: 0.5625, unc: 12, unf: 18, had: 'read' },
  { size: '5/8', majorIn: 0.625, unc: 11, unf: 18, had: 'read' },
  { size: '3/4', majorIn: 0.75, unc: 10, unf: 16, had: 'read' },
  { size: '7/8', majorIn: 0.875, unc: 9, unf: 14, had: 'read' },
  { size: '1', majorIn: 1, unc: 8, unf: 12, had: 'read' },
  { size: '1 1/8', majorIn: 1.125, unc: 7, unf: 12, un8: 8, had: 'read' },
  { size: '1 1/4', majorIn: 1.25, unc: 7, unf: 12, un8: 8, had: 'read' },
  { size: '1 3/8', majorIn: 1.375, unc: 6, unf: 12, un8: 8, had: 'read' },
  { size: '1 1/2', majorIn: 1.5, unc: 6, unf: 12, un8: 8, had: 'read' },
  { size: '1 5/8', majorIn: 1.625, un8: 8, had: 'from memory' },
  { size: '1 3/4', majorIn: 1.75, unc: 5, un8: 8, had: 'read' },
  { size: '1 7/8', majorIn: 1.875, un8: 8, had: 'from memory' },
  { size: '2', majorIn: 2, unc: 4.5, un8: 8, had: 'read' },
  { size: '2 1/4', majorIn: 2.25, unc: 4.5, un8: 8, had: 'read' },
  { size: '2 1/2', majorIn: 2.5, unc: 4, un8: 8, had: 'read' },
  { size: '2 3/4', majorIn: 2.75, unc: 4, un8: 8, had: 'read' },
  { size: '3', majorIn: 3, unc: 4, un8: 8, had: 'read' },
  { size: '3 1/4', majorIn: 3.25, unc: 4, un8: 8, had: 'read' },
  { size: '3 1/2', majorIn: 3.5, unc: 4, un8: 8, had: 'read' },
  { size: '3 3/4', majorIn: 3.75, unc: 4, un8: 8, had: 'read' },
  { size: '4', majorIn: 4, unc: 4, un8: 8, had: 'read' },
];
