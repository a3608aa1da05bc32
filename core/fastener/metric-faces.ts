import type { Provenance } from './provenance.ts';

/** A head or nut of metric size: the least outer diameter of its bearing face and how high it stands, mm. */
export interface MetricFaceRow {
  readonly threadMm: number;
  readonly acrossFlatsMm: number;
  readonly bearingOuterMm: number;
  readonly heightMm: number;
  readonly had: Provenance;
}

// ISO 4014:2011 and ISO 4017:2014, hexagon heads: s, dw min and nominal k, product grade A to M24, B above (secondary tables,
// read to M24; above from memory). One copy prints dw 19.37 for M14; two others have 19.64.
export const HEX_HEADS: readonly MetricFaceRow[] = [
  { threadMm: 1.6, acrossFlatsMm: 3.2, bearingOuterMm: 2.27, heightMm: 1.1, had: 'read' },
  { threadMm: 2, acrossFlatsMm: 4, bearingOuterMm: 3.07, heightMm: 1.4, had: 'read' },
  { threadMm: 2.5, acrossFlatsMm: 5, bearingOuterMm: 4.07, heightMm: 1.7, had: 'read' },
  { threadMm: 3, acrossFlatsMm: 5.5, bearingOuterMm: 4.57, heightMm: 2, had: 'read' },
  { threadMm: 3.5, acrossFlatsMm: 6, bearingOuterMm: 5.07, heightMm: 2.4, had: 'from memory' },
  { threadMm: 4, acrossFlatsMm: 7, bearingOuterMm: 5.88, heightMm: 2.8, had: 'read' },
  { threadMm: 5, acrossFlatsMm: 8, bearingOuterMm: 6.88, heightMm: 3.5, had: 'read' },
  { threadMm: 6, acrossFlatsMm: 10, bearingOuterMm: 8.88, heightMm: 4, had: 'read' },
  { threadMm: 8, acrossFlatsMm: 13, bearingOuterMm: 11.63, heightMm: 5.3, had: 'read' },
  { threadMm: 10, acrossFlatsMm: 16, bearingOuterMm: 14.63, heightMm: 6.4, had: 'read' },
  { threadMm: 12, acrossFlatsMm: 18, bearingOuterMm: 16.63, heightMm: 7.5, had: 'read' },
  { threadMm: 14, acrossFlatsMm: 21, bearingOuterMm: 19.64, heightMm: 8.8, had: 'read' },
  { threadMm: 16, acrossFlatsMm: 24, bearingOuterMm: 22.49, heightMm: 10, had: 'read' },
  { threadMm: 18, acrossFlatsMm: 27, bearingOuterMm: 25.34, heightMm: 11.5, had: 'read' },
  { threadMm: 20, acrossFlatsMm: 30, bearingOuterMm: 28.19, heightMm: 12.5, had: 'read' },
  { threadMm: 22, acrossFlatsMm: 34, bearingOuterMm: 31.71, heightMm: 14, had: 'read' },
  { threadMm: 24, acrossFlatsMm: 36, bearingOuterMm: 33.61, heightMm: 15, had: 'read' },
  { threadMm: 27, acrossFlatsMm: 41, bearingOuterMm: 38, heightMm: 17, had: 'from memory' },
  { threadMm: 30, acrossFlatsMm: 46, bearingOuterMm: 42.75, heightMm: 18.7, had: 'from memory' },
  { threadMm: 33, acrossFlatsMm: 50, bearingOuterMm: 46.55, heightMm: 21, had: 'from memory' },
  { threadMm: 36, acrossFlatsMm: 55, bearingOuterMm: 51.11, heightMm: 22.5, had: 'from memory' },
  { threadMm: 39, acrossFlatsMm: 60, bearingOuterMm: 55.86, heightMm: 25, had: 'from memory' },
  { threadMm: 42, acrossFlatsMm: 65, bearingOuterMm: 59.95, heightMm: 26, had: 'from memory' },
  { threadMm: 45, acrossFlatsMm: 70, bearingOuterMm: 64.7, heightMm: 28, had: 'from memory' },
  { threadMm: 48, acrossFlatsMm: 75, bearingOuterMm: 69.45, heightMm: 30, had: 'from memory' },
  { threadMm: 52, acrossFlatsMm: 80, bearingOuterMm: 74.2, heightMm: 33, had: 'from memory' },
  { threadMm: 56, acrossFlatsMm: 85, bearingOuterMm: 78.66, heightMm: 35, had: 'from memory' },
  { threadMm: 60, acrossFlatsMm: 90, bearingOuterMm: 83.41, heightMm: 38, had: 'from memory' },
  { threadMm: 64, acrossFlatsMm: 95, bearingOuterMm: 88.16, heightMm: 40, had: 'from memory' },
];

// ISO 4032:2012, hexagon nuts style 1: s and m max as in the tables of a public parts library (read), dw min from memory.
export const HEX_NUTS: readonly MetricFaceRow[] = [
  { threadMm: 1.6, acrossFlatsMm: 3.2, bearingOuterMm: 2.4, heightMm: 1.3, had: 'from memory' },
  { threadMm: 2, acrossFlatsMm: 4, bearingOuterMm: 3.1, heightMm: 1.6, had: 'from memory' },
  { threadMm: 2.5, acrossFlatsMm: 5, bearingOuterMm: 4.1, heightMm: 2, had: 'from memory' },
  { threadMm: 3, acrossFlatsMm: 5.5, bearingOuterMm: 4.6, heightMm: 2.4, had: 'from memory' },
  { threadMm: 3.5, acrossFlatsMm: 6, bearingOuterMm: 5, heightMm: 2.8, had: 'from memory' },
  { threadMm: 4, acrossFlatsMm: 7, bearingOuterMm: 5.9, heightMm: 3.2, had: 'from memory' },
  { threadMm: 5, acrossFlatsMm: 8, bearingOuterMm: 6.9, heightMm: 4.7, had: 'from memory' },
  { threadMm: 6, acrossFlatsMm: 10, bearingOuterMm: 8.9, heightMm: 5.2, had: 'from memory' },
  { threadMm: 8, acrossFlatsMm: 13, bearingOuterMm: 11.6, heightMm: 6.8, had: 'from memory' },
  { threadMm: 10, acrossFlatsMm: 16, bearingOuterMm: 14.6, heightMm: 8.4, had: 'from memory' },
  { threadMm: 12, acrossFlatsMm: 18, bearingOuterMm: 16.6, heightMm: 10.8, had: 'from memory' },
  { threadMm: 14, acrossFlatsMm: 21, bearingOuterMm: 19.6, heightMm: 12.8, had: 'from memory' },
  { threadMm: 16, acrossFlatsMm: 24, bearingOuterMm: 22.5, heightMm: 14.8, had: 'from memory' },
  { threadMm: 18, acrossFlatsMm: 27, bearingOuterMm: 24.9, heightMm: 15.8, had: 'from memory' },
  { threadMm: 20, acrossFlatsMm: 30, bearingOuterMm: 27.7, heightMm: 18, had: 'from memory' },
  { threadMm: 22, acrossFlatsMm: 34, bearingOuterMm: 31.4, heightMm: 19.4, had: 'from memory' },
  { threadMm: 24, acrossFlatsMm: 36, bearingOuterMm: 33.3, heightMm: 21.5, had: 'from memory' },
  { threadMm: 27, acrossFlatsMm: 41, bearingOuterMm: 38, heightMm: 23.8, had: 'from memory' },
  { threadMm: 30, acrossFlatsMm: 46, bearingOuterMm: 42.8, heightMm: 25.6, had: 'from memory' },
  { threadMm: 33, acrossFlatsMm: 50, bearingOuterMm: 46.6, heightMm: 28.7, had: 'from memory' },
  { threadMm: 36, acrossFlatsMm: 55, bearingOuterMm: 51.1, heightMm: 31, had: 'from memory' },
  { threadMm: 39, acrossFlatsMm: 60, bearingOuterMm: 55.9, heightMm: 33.4, had: 'from memory' },
  { threadMm: 42, acrossFlatsMm: 65, bearingOuterMm: 60, heightMm: 34, had: 'from memory' },
  { threadMm: 45, acrossFlatsMm: 70, bearingOuterMm: 64.7, heightMm: 36, had: 'from memory' },
  { threadMm: 48, acrossFlatsMm: 75, bearingOuterMm: 69.5, heightMm: 38, had: 'from memory' },
  { threadMm: 52, acrossFlatsMm: 80, bearingOuterMm: 74.2, heightMm: 42, had: 'from memory' },
  { threadMm: 56, acrossFlatsMm: 85, bearingOuterMm: 78.7, heightMm: 45, had: 'from memory' },
  { threadMm: 60, acrossFlatsMm: 90, bearingOuterMm: 83.4, heightMm: 48, had: 'from memory' },
  { threadMm: 64, acrossFlatsMm: 95, bearingOuterMm: 88.2, heightMm: 51, had: 'from memory' },
];

// EN 14399-4:2015, system HV, hexagon bolts: s, dw min, nominal k (secondary tables, read).
export const HV_HEADS: readonly MetricFaceRow[] = [
  { threadMm: 12, acrossFlatsMm: 22, bearingOuterMm: 20.1, heightMm: 8, had: 'read' },
  { threadMm: 16, acrossFlatsMm: 27, bearingOuterMm: 24.9, heightMm: 10, had: 'read' },
  { threadMm: 20, acrossFlatsMm: 32, bearingOuterMm: 29.5, heightMm: 13, had: 'read' },
  { threadMm: 22, acrossFlatsMm: 36, bearingOuterMm: 33.3, heightMm: 14, had: 'read' },
  { threadMm: 24, acrossFlatsMm: 41, bearingOuterMm: 38, heightMm: 15, had: 'read' },
  { threadMm: 27, acrossFlatsMm: 46, bearingOuterMm: 42.8, heightMm: 17, had: 'read' },
  { threadMm: 30, acrossFlatsMm: 50, bearingOuterMm: 46.6, heightMm: 19, had: 'read' },
  { threadMm: 36, acrossFlatsMm: 60, bearingOuterMm: 55.9, heightMm: 23, had: 'read' },
];

// EN 14399-4:2015, system HV, nuts: s and dw as the bolts, m max (from memory).
export const HV_NUTS: readonly MetricFaceRow[] = [
  { threadMm: 12, acrossFlatsMm: 22, bearingOuterMm: 20.1, heightMm: 10, had: 'from memory' },
  { threadMm: 16, acrossFlatsMm: 27, bearingOuterMm: 24.9, heightMm: 13, had: 'from memory' },
  { threadMm: 20, acrossFlatsMm: 32, bearingOuterMm: 29.5, heightMm: 16, had: 'from memory' },
  { threadMm: 22, acrossFlatsMm: 36, bearingOuterMm: 33.3, heightMm: 18, had: 'from memory' },
  { threadMm: 24, acrossFlatsMm: 41, bearingOuterMm: 38, heightMm: 20, had: 'from memory' },
  { threadMm: 27, acrossFlatsMm: 46, bearingOuterMm: 42.8, heightMm: 22, had: 'from memory' },
  { threadMm: 30, acrossFlatsMm: 50, bearingOuterMm: 46.6, heightMm: 24, had: 'from memory' },
  { threadMm: 36, acrossFlatsMm: 60, bearingOuterMm: 55.9, heightMm: 29, had: 'from memory' },
];

// EN 14399-3:2015, system HR, hexagon bolts: s, dw min, nominal k (secondary table, read).
export const HR_HEADS: readonly MetricFaceRow[] = [
  { threadMm: 12, acrossFlatsMm: 22, bearingOuterMm: 20.1, heightMm: 7.5, had: 'read' },
  { threadMm: 14, acrossFlatsMm: 24, bearingOuterMm: 22, heightMm: 8.8, had: 'read' },
  { threadMm: 16, acrossFlatsMm: 27, bearingOuterMm: 24.9, heightMm: 10, had: 'read' },
  { threadMm: 18, acrossFlatsMm: 30, bearingOuterMm: 27.7, heightMm: 11.5, had: 'read' },
  { threadMm: 20, acrossFlatsMm: 32, bearingOuterMm: 29.5, heightMm: 12.5, had: 'read' },
  { threadMm: 22, acrossFlatsMm: 36, bearingOuterMm: 33.3, heightMm: 14, had: 'read' },
  { threadMm: 24, acrossFlatsMm: 41, bearingOuterMm: 38, heightMm: 15, had: 'read' },
  { threadMm: 27, acrossFlatsMm: 46, bearingOuterMm: 42.8, heightMm: 17, had: 'read' },
  { threadMm: 30, acrossFlatsMm: 50, bearingOuterMm: 46.6, heightMm: 18.7, had: 'read' },
  { threadMm: 36, acrossFlatsMm: 60, bearingOuterMm: 55.9, heightMm: 22.5, had: 'read' },
];

/** A socket head of metric size, mm. */
export interface SocketHeadRow {
  readonly threadMm: number;
  readonly headDiameterMm: number;
  readonly bearingOuterMm: number;
  readonly heightMm: number;
  readonly had: Provenance;
}

// ISO 4762:2004, hexagon socket head cap screws: dk max (plain), dw min, k max (tables of a public parts library, read).
export const SOCKET_HEADS: readonly SocketHeadRow[] = [
  { threadMm: 1.6, headDiameterMm: 3, bearingOuterMm: 2.72, heightMm: 1.6, had: 'read' },
  { threadMm: 2, headDiameterMm: 3.8, bearingOuterMm: 3.48, heightMm: 2, had: 'read' },
  { threadMm: 2.5, headDiameterMm: 4.5, bearingOuterMm: 4.18, heightMm: 2.5, had: 'read' },
  { threadMm: 3, headDiameterMm: 5.5, bearingOuterMm: 5.07, heightMm: 3, had: 'read' },
  { threadMm: 4, headDiameterMm: 7, bearingOuterMm: 6.53, heightMm: 4, had: 'read' },
  { threadMm: 5, headDiameterMm: 8.5, bearingOuterMm: 8.03, heightMm: 5, had: 'read' },
  { threadMm: 6, headDiameterMm: 10, bearingOuterMm: 9.38, heightMm: 6, had: 'read' },
  { threadMm: 8, headDiameterMm: 13, bearingOuterMm: 12.33, heightMm: 8, had: 'read' },
  { threadMm: 10, headDiameterMm: 16, bearingOuterMm: 15.33, heightMm: 10, had: 'read' },
  { threadMm: 12, headDiameterMm: 18, bearingOuterMm: 17.23, heightMm: 12, had: 'read' },
  { threadMm: 14, headDiameterMm: 21, bearingOuterMm: 20.17, heightMm: 14, had: 'read' },
  { threadMm: 16, headDiameterMm: 24, bearingOuterMm: 23.17, heightMm: 16, had: 'read' },
  { threadMm: 20, headDiameterMm: 30, bearingOuterMm: 28.87, heightMm: 20, had: 'read' },
  { threadMm: 24, headDiameterMm: 36, bearingOuterMm: 34.81, heightMm: 24, had: 'read' },
  { threadMm: 30, headDiameterMm: 45, bearingOuterMm: 43.61, heightMm: 30, had: 'read' },
  { threadMm: 36, headDiameterMm: 54, bearingOuterMm: 52.54, heightMm: 36, had: 'read' },
  { threadMm: 42, headDiameterMm: 63, bearingOuterMm: 61.34, heightMm: 42, had: 'read' },
  { threadMm: 48, headDiameterMm: 72, bearingOuterMm: 70.34, heightMm: 48, had: 'read' },
  { threadMm: 56, headDiameterMm: 84, bearingOuterMm: 82.26, heightMm: 56, had: 'read' },
  { threadMm: 64, headDiameterMm: 96, bearingOuterMm: 94.26, heightMm: 64, had: 'read' },
];

/** A washer of metric size: hole, outside, thickness, nominal, mm. */
export interface WasherRow {
  readonly threadMm: number;
  readonly holeMm: number;
  readonly outerMm: number;
  readonly thicknessMm: number;
  readonly had: Provenance;
}

// ISO 7089:2000, plain washers, normal series, product grade A (tables of a public parts library, read; the others from memory).
export const PLAIN_WASHERS: readonly WasherRow[] = [
  { threadMm: 1.6, holeMm: 1.7, outerMm: 4, thicknessMm: 0.3, had: 'read' },
  { threadMm: 2, holeMm: 2.2, outerMm: 5, thicknessMm: 0.3, had: 'read' },
  { threadMm: 2.5, holeMm: 2.7, outerMm: 6, thicknessMm: 0.5, had: 'read' },
  { threadMm: 3, holeMm: 3.2, outerMm: 7, thicknessMm: 0.5, had: 'read' },
  { threadMm: 4, holeMm: 4.3, outerMm: 9, thicknessMm: 0.8, had: 'read' },
  { threadMm: 5, holeMm: 5.3, outerMm: 10, thicknessMm: 1, had: 'read' },
  { threadMm: 6, holeMm: 6.4, outerMm: 12, thicknessMm: 1.6, had: 'read' },
  { threadMm: 8, holeMm: 8.4, outerMm: 16, thicknessMm: 1.6, had: 'read' },
  { threadMm: 10, holeMm: 10.5, outerMm: 20, thicknessMm: 2, had: 'read' },
  { threadMm: 12, holeMm: 13, outerMm: 24, thicknessMm: 2.5, had: 'read' },
  { threadMm: 14, holeMm: 15, outerMm: 28, thicknessMm: 2.5, had: 'from memory' },
  { threadMm: 16, holeMm: 17, outerMm: 30, thicknessMm: 3, had: 'read' },
  { threadMm: 18, holeMm: 19, outerMm: 34, thicknessMm: 3, had: 'from memory' },
  { threadMm: 20, holeMm: 21, outerMm: 37, thicknessMm: 3, had: 'read' },
  { threadMm: 22, holeMm: 23, outerMm: 39, thicknessMm: 3, had: 'from memory' },
  { threadMm: 24, holeMm: 25, outerMm: 44, thicknessMm: 4, had: 'read' },
  { threadMm: 27, holeMm: 28, outerMm: 50, thicknessMm: 4, had: 'from memory' },
  { threadMm: 30, holeMm: 31, outerMm: 56, thicknessMm: 4, had: 'read' },
  { threadMm: 33, holeMm: 34, outerMm: 60, thicknessMm: 5, had: 'from memory' },
  { threadMm: 36, holeMm: 37, outerMm: 66, thicknessMm: 5, had: 'read' },
  { threadMm: 39, holeMm: 42, outerMm: 72, thicknessMm: 6, had: 'from memory' },
  { threadMm: 42, holeMm: 45, outerMm: 78, thicknessMm: 8, had: 'read' },
  { threadMm: 45, holeMm: 48, outerMm: 85, thicknessMm: 8, had: 'from memory' },
  { threadMm: 48, holeMm: 52, outerMm: 92, thicknessMm: 8, had: 'read' },
  { threadMm: 52, holeMm: 56, outerMm: 98, thicknessMm: 8, had: 'from memory' },
  { threadMm: 56, holeMm: 62, outerMm: 105, thicknessMm: 10, had: 'read' },
  { threadMm: 60, holeMm: 66, outerMm: 110, thicknessMm: 10, had: 'from memory' },
  { threadMm: 64, holeMm: 70, outerMm: 115, thicknessMm: 10, had: 'read' },
];

// EN 14399-6:2015, plain chamfered washers (secondary table, read).
export const PRELOAD_WASHERS: readonly WasherRow[] = [
  { threadMm: 12, holeMm: 13, outerMm: 24, thicknessMm: 3, had: 'read' },
  { threadMm: 14, holeMm: 15, outerMm: 28, thicknessMm: 3, had: 'read' },
  { threadMm: 16, holeMm: 17, outerMm: 30, thicknessMm: 4, had: 'read' },
  { threadMm: 18, holeMm: 19, outerMm: 34, thicknessMm: 4, had: 'read' },
  { threadMm: 20, holeMm: 21, outerMm: 37, thicknessMm: 4, had: 'read' },
  { threadMm: 22, holeMm: 23, outerMm: 39, thicknessMm: 4, had: 'read' },
  { threadMm: 24, holeMm: 25, outerMm: 44, thicknessMm: 4, had: 'read' },
  { threadMm: 27, holeMm: 28, outerMm: 50, thicknessMm: 5, had: 'read' },
  { threadMm: 30, holeMm: 31, outerMm: 56, thicknessMm: 5, had: 'read' },
  { threadMm: 36, holeMm: 37, outerMm: 66, thicknessMm: 6, had: 'read' },
];
