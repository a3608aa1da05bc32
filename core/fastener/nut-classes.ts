import type { Provenance } from './provenance.ts';

/** Stress under proof load of a nut, MPa, over a range of sizes: above < d ≤ up to. */
export interface NutClassRow {
  readonly name: string;
  readonly aboveMm: number;
  readonly upToMm: number;
  readonly proofMPa: number;
  readonly had: Provenance;
}

// ISO 898-2:1992, table 5, style 1, class 12 above M16 style 2 (from memory). The row M8 to M10 stands in the same
// proportion to the reduced stresses of ISO 10684, annex A (read), for every class.
export const NUT_CLASSES: readonly NutClassRow[] = [
  { name: '04', aboveMm: 0, upToMm: 39, proofMPa: 380, had: 'from memory' },
  { name: '05', aboveMm: 0, upToMm: 39, proofMPa: 500, had: 'from memory' },
  { name: '5', aboveMm: 0, upToMm: 4, proofMPa: 520, had: 'from memory' },
  { name: '5', aboveMm: 4, upToMm: 7, proofMPa: 580, had: 'from memory' },
  { name: '5', aboveMm: 7, upToMm: 10, proofMPa: 590, had: 'from memory' },
  { name: '5', aboveMm: 10, upToMm: 16, proofMPa: 610, had: 'from memory' },
  { name: '5', aboveMm: 16, upToMm: 39, proofMPa: 630, had: 'from memory' },
  { name: '6', aboveMm: 0, upToMm: 4, proofMPa: 600, had: 'from memory' },
  { name: '6', aboveMm: 4, upToMm: 7, proofMPa: 670, had: 'from memory' },
  { name: '6', aboveMm: 7, upToMm: 10, proofMPa: 680, had: 'from memory' },
  { name: '6', aboveMm: 10, upToMm: 16, proofMPa: 700, had: 'from memory' },
  { name: '6', aboveMm: 16, upToMm: 39, proofMPa: 720, had: 'from memory' },
  { name: '8', aboveMm: 0, upToMm: 4, proofMPa: 800, had: 'from memory' },
  { name: '8', aboveMm: 4, upToMm: 7, proofMPa: 855, had: 'from memory' },
  { name: '8', aboveMm: 7, upToMm: 10, proofMPa: 870, had: 'from memory' },
  { name: '8', aboveMm: 10, upToMm: 16, proofMPa: 880, had: 'from memory' },
  { name: '8', aboveMm: 16, upToMm: 39, proofMPa: 920, had: 'from memory' },
  { name: '9', aboveMm: 0, upToMm: 4, proofMPa: 900, had: 'from memory' },
  { name: '9', aboveMm: 4, upToMm: 7, proofMPa: 915, had: 'from memory' },
  { name: '9', aboveMm: 7, upToMm: 10, proofMPa: 940, had: 'from memory' },
  { name: '9', aboveMm: 10, upToMm: 16, proofMPa: 950, had: 'from memory' },
  { name: '9', aboveMm: 16, upToMm: 39, proofMPa: 920, had: 'from memory' },
  { name: '10', aboveMm: 0, upToMm: 10, proofMPa: 1040, had: 'from memory' },
  { name: '10', aboveMm: 10, upToMm: 16, proofMPa: 1050, had: 'from memory' },
  { name: '10', aboveMm: 16, upToMm: 39, proofMPa: 1060, had: 'from memory' },
  { name: '12', aboveMm: 0, upToMm: 7, proofMPa: 1150, had: 'from memory' },
  { name: '12', aboveMm: 7, upToMm: 10, proofMPa: 1160, had: 'from memory' },
  { name: '12', aboveMm: 10, upToMm: 16, proofMPa: 1190, had: 'from memory' },
  { name: '12', aboveMm: 16, upToMm: 39, proofMPa: 1200, had: 'from memory' },
];

/** The least class of nut that carries a bolt of a class to its breaking load. */
export interface NutForBoltRow {
  readonly boltClass: string;
  readonly nutClass: string;
  readonly had: Provenance;
}

// ISO 898-2:2012, table on the combination of bolts and nuts of regular and high style (from memory). Classes 04 and 05 are
// thin nuts: they strip before the bolt breaks, whatever its class.
export const NUTS_FOR_BOLTS: readonly NutForBoltRow[] = [
  { boltClass: '4.6', nutClass: '5', had: 'from memory' },
  { boltClass: '4.8', nutClass: '5', had: 'from memory' },
  { boltClass: '5.6', nutClass: '5', had: 'from memory' },
  { boltClass: '5.8', nutClass: '5', had: 'from memory' },
  { boltClass: '6.8', nutClass: '6', had: 'from memory' },
  { boltClass: '8.8', nutClass: '8', had: 'from memory' },
  { boltClass: '9.8', nutClass: '9', had: 'from memory' },
  { boltClass: '10.9', nutClass: '10', had: 'from memory' },
  { boltClass: '12.9', nutClass: '12', had: 'from memory' },
];
