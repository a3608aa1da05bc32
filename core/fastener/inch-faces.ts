import type { Provenance } from './provenance.ts';

/** A hexagon head of inch size: width across flats and height, basic, in. */
export interface InchFaceRow {
  readonly size: string;
  readonly acrossFlatsIn: number;
  readonly heightIn: number;
  readonly had: Provenance;
}

// ASME B18.2.1-2012, hex cap screws (flats as in the tables of a public parts library; heights from memory).
export const HEX_CAP_HEADS: readonly InchFaceRow[] = [
  { size: '1/4', acrossFlatsIn: 0.4375, heightIn: 0.15625, had: 'from memory' },
  { size: '5/16', acrossFlatsIn: 0.5, heightIn: 0.203125, had: 'from memory' },
  { size: '3/8', acrossFlatsIn: 0.5625, heightIn: 0.234375, had: 'from memory' },
  { size: '7/16', acrossFlatsIn: 0.625, heightIn: 0.28125, had: 'from memory' },
  { size: '1/2', acrossFlatsIn: 0.75, heightIn: 0.3125, had: 'from memory' },
  { size: '9/16', acrossFlatsIn: 0.8125, heightIn: 0.359375, had: 'from memory' },
  { size: '5/8', acrossFlatsIn: 0.9375, heightIn: 0.390625, had: 'from memory' },
  { size: '3/4', acrossFlatsIn: 1.125, heightIn: 0.46875, had: 'from memory' },
  { size: '7/8', acrossFlatsIn: 1.3125, heightIn: 0.546875, had: 'from memory' },
  { size: '1', acrossFlatsIn: 1.5, heightIn: 0.609375, had: 'from memory' },
  { size: '1 1/8', acrossFlatsIn: 1.6875, heightIn: 0.6875, had: 'from memory' },
  { size: '1 1/4', acrossFlatsIn: 1.875, heightIn: 0.78125, had: 'from memory' },
  { size: '1 3/8', acrossFlatsIn: 2.0625, heightIn: 0.84375, had: 'from memory' },
  { size: '1 1/2', acrossFlatsIn: 2.25, heightIn: 0.9375, had: 'from memory' },
];

// ASME B18.2.1-2012, heavy hex bolts (secondary table, read to 2 1/4 in; above from memory).
export const HEAVY_HEX_HEADS: readonly InchFaceRow[] = [
  { size: '1/2', acrossFlatsIn: 0.875, heightIn: 0.34375, had: 'read' },
  { size: '5/8', acrossFlatsIn: 1.0625, heightIn: 0.421875, had: 'read' },
  { size: '3/4', acrossFlatsIn: 1.25, heightIn: 0.5, had: 'read' },
  { size: '7/8', acrossFlatsIn: 1.4375, heightIn: 0.578125, had: 'read' },
  { size: '1', acrossFlatsIn: 1.625, heightIn: 0.671875, had: 'read' },
  { size: '1 1/8', acrossFlatsIn: 1.8125, heightIn: 0.75, had: 'read' },
  { size: '1 1/4', acrossFlatsIn: 2, heightIn: 0.84375, had: 'read' },
  { size: '1 3/8', acrossFlatsIn: 2.1875, heightIn: 0.90625, had: 'read' },
  { size: '1 1/2', acrossFlatsIn: 2.375, heightIn: 1, had: 'read' },
  { size: '1 5/8', acrossFlatsIn: 2.5625, heightIn: 1.09375, had: 'read' },
  { size: '1 3/4', acrossFlatsIn: 2.75, heightIn: 1.15625, had: 'read' },
  { size: '1 7/8', acrossFlatsIn: 2.9375, heightIn: 1.25, had: 'read' },
  { size: '2', acrossFlatsIn: 3.125, heightIn: 1.34375, had: 'read' },
  { size: '2 1/4', acrossFlatsIn: 3.5, heightIn: 1.5, had: 'read' },
  { size: '2 1/2', acrossFlatsIn: 3.875, heightIn: 1.65625, had: 'from memory' },
  { size: '2 3/4', acrossFlatsIn: 4.25, heightIn: 1.8125, had: 'from memory' },
  { size: '3', acrossFlatsIn: 4.625, heightIn: 2, had: 'from memory' },
];

// ASME B18.2.6-2010, heavy hex structural bolts (secondary tables, read).
export const STRUCTURAL_HEADS: readonly InchFaceRow[] = [
  { size: '1/2', acrossFlatsIn: 0.875, heightIn: 0.3125, had: 'read' },
  { size: '5/8', acrossFlatsIn: 1.0625, heightIn: 0.390625, had: 'read' },
  { size: '3/4', acrossFlatsIn: 1.25, heightIn: 0.46875, had: 'read' },
  { size: '7/8', acrossFlatsIn: 1.4375, heightIn: 0.546875, had: 'read' },
  { size: '1', acrossFlatsIn: 1.625, heightIn: 0.609375, had: 'read' },
  { size: '1 1/8', acrossFlatsIn: 1.8125, heightIn: 0.6875, had: 'read' },
  { size: '1 1/4', acrossFlatsIn: 2, heightIn: 0.78125, had: 'read' },
  { size: '1 3/8', acrossFlatsIn: 2.1875, heightIn: 0.84375, had: 'read' },
  { size: '1 1/2', acrossFlatsIn: 2.375, heightIn: 0.9375, had: 'read' },
];
