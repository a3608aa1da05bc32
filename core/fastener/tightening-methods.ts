import type { Provenance } from './provenance.ts';

/** Tightening factor: greatest over least preload that a way of tightening gives. */
export interface TighteningFactorRow {
  readonly method: string;
  readonly lowest: number;
  readonly highest: number;
  readonly had: Provenance;
}

// VDI 2230-1:2015, table A8, guide values of the tightening factor (from memory, but for the torque wrench with estimated
// friction, read in a worked example). Lower values for small angles and stiff joints, higher for long and soft ones.
// biome-ignore format: one row a line
export const TIGHTENING_FACTORS: readonly TighteningFactorRow[] = [
  { method: 'elongation measured by ultrasound', lowest: 1.1, highest: 1.2, had: 'from memory' },
  { method: 'elongation measured mechanically', lowest: 1.1, highest: 1.5, had: 'from memory' },
  { method: 'yield controlled', lowest: 1.2, highest: 1.4, had: 'from memory' },
  { method: 'angle controlled', lowest: 1.2, highest: 1.4, had: 'from memory' },
  { method: 'hydraulic', lowest: 1.2, highest: 1.6, had: 'from memory' },
  { method: 'torque wrench, torque found by tests on the joint', lowest: 1.4, highest: 1.6, had: 'from memory' },
  { method: 'torque wrench, friction estimated as class B', lowest: 1.6, highest: 2, had: 'read' },
  { method: 'torque wrench, friction estimated as class A', lowest: 1.7, highest: 2.5, had: 'from memory' },
  { method: 'impact wrench', lowest: 2.5, highest: 4, had: 'from memory' },
];

/** Half width of the scatter of preload, percent of the mean. */
export interface PreloadScatterRow {
  readonly method: string;
  readonly leastPercent: number;
  readonly greatestPercent: number;
  readonly source: string;
  readonly had: Provenance;
}

// Scatter of preload as others print it (secondary tables, read).
// biome-ignore format: one row a line
export const PRELOAD_SCATTERS: readonly PreloadScatterRow[] = [
  { method: 'yield controlled', leastPercent: 5, greatestPercent: 12, source: 'VDI 2230:1986', had: 'read' },
  { method: 'angle controlled', leastPercent: 5, greatestPercent: 12, source: 'VDI 2230:1986', had: 'read' },
  { method: 'hydraulic', leastPercent: 9, greatestPercent: 23, source: 'VDI 2230:1986', had: 'read' },
  { method: 'torque wrench, torque found by tests on the joint', leastPercent: 17, greatestPercent: 23, source: 'VDI 2230:1986', had: 'read' },
  { method: 'torque wrench, friction estimated', leastPercent: 23, greatestPercent: 28, source: 'VDI 2230:1986', had: 'read' },
  { method: 'power screwdriver', leastPercent: 26, greatestPercent: 43, source: 'VDI 2230:1986', had: 'read' },
  { method: 'feel', leastPercent: 35, greatestPercent: 35, source: 'Machinery’s Handbook', had: 'read' },
  { method: 'torque wrench', leastPercent: 25, greatestPercent: 25, source: 'Machinery’s Handbook', had: 'read' },
  { method: 'turn of nut', leastPercent: 15, greatestPercent: 15, source: 'Machinery’s Handbook', had: 'read' },
  { method: 'elongation', leastPercent: 3, greatestPercent: 5, source: 'Machinery’s Handbook', had: 'read' },
  { method: 'ultrasound', leastPercent: 1, greatestPercent: 1, source: 'Machinery’s Handbook', had: 'read' },
  { method: 'torque wrench, unlubricated', leastPercent: 35, greatestPercent: 35, source: 'NASA-STD-5020B, table 3', had: 'read' },
  { method: 'torque wrench, lubricated', leastPercent: 25, greatestPercent: 25, source: 'NASA-STD-5020B, table 3', had: 'read' },
  { method: 'elongation', leastPercent: 10, greatestPercent: 10, source: 'NASA-STD-5020B, table 3', had: 'read' },
];

/** What each surface of a joint gives way after tightening, micrometres. */
export interface EmbeddingRow {
  readonly roughnessAboveUm: number;
  readonly roughnessUpToUm: number;
  readonly load: 'axial' | 'shear';
  /** In the engaged thread. */
  readonly threadUm: number;
  /** Under the head, and the same under the nut. */
  readonly bearingUm: number;
  /** Where two clamped parts meet. */
  readonly interfaceUm: number;
  readonly had: Provenance;
}

// VDI 2230-1:2015, table 5, guide values of embedding for steel, by roughness Rz (from memory).
// biome-ignore format: one row a line
export const EMBEDDINGS: readonly EmbeddingRow[] = [
  { roughnessAboveUm: 0, roughnessUpToUm: 10, load: 'axial', threadUm: 3, bearingUm: 2.5, interfaceUm: 1.5, had: 'from memory' },
  { roughnessAboveUm: 0, roughnessUpToUm: 10, load: 'shear', threadUm: 3, bearingUm: 3, interfaceUm: 2, had: 'from memory' },
  { roughnessAboveUm: 10, roughnessUpToUm: 40, load: 'axial', threadUm: 3, bearingUm: 3, interfaceUm: 2, had: 'from memory' },
  { roughnessAboveUm: 10, roughnessUpToUm: 40, load: 'shear', threadUm: 3, bearingUm: 4.5, interfaceUm: 2.5, had: 'from memory' },
  { roughnessAboveUm: 40, roughnessUpToUm: 160, load: 'axial', threadUm: 3, bearingUm: 4, interfaceUm: 3, had: 'from memory' },
  { roughnessAboveUm: 40, roughnessUpToUm: 160, load: 'shear', threadUm: 3, bearingUm: 6.5, interfaceUm: 3.5, had: 'from memory' },
];
