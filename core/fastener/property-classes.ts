import type { Provenance } from './provenance.ts';

/** Strength of one class over a range of sizes, figures in MPa and mm; a size belongs when above < d ≤ up to. */
export interface MetricClassRow {
  readonly name: string;
  readonly standard: 'ISO 898-1' | 'ISO 3506-1' | 'ASTM A193' | 'ASTM A320';
  readonly aboveMm?: number;
  readonly upToMm?: number;
  /** Stress under proof load; not every standard sets one. */
  readonly proofMPa?: number;
  readonly yieldMPa: number;
  readonly tensileMPa: number;
  readonly had: Provenance;
}

// ISO 898-1:2013, table 3: Rm min, ReL / Rf / Rp0.2 min, Sp,nom; 8.8 steps at 16 mm, 9.8 ends there (secondary table; 5.6 and 6.8 from memory).
export const METRIC_CLASSES: readonly MetricClassRow[] = [
  { name: '4.6', standard: 'ISO 898-1', proofMPa: 225, yieldMPa: 240, tensileMPa: 400, had: 'read' },
  { name: '4.8', standard: 'ISO 898-1', proofMPa: 310, yieldMPa: 340, tensileMPa: 420, had: 'from memory' },
  { name: '5.6', standard: 'ISO 898-1', proofMPa: 280, yieldMPa: 300, tensileMPa: 500, had: 'from memory' },
  { name: '5.8', standard: 'ISO 898-1', proofMPa: 380, yieldMPa: 420, tensileMPa: 520, had: 'read' },
  { name: '6.8', standard: 'ISO 898-1', proofMPa: 440, yieldMPa: 480, tensileMPa: 600, had: 'from memory' },
  { name: '8.8', standard: 'ISO 898-1', upToMm: 16, proofMPa: 580, yieldMPa: 640, tensileMPa: 800, had: 'read' },
  { name: '8.8', standard: 'ISO 898-1', aboveMm: 16, proofMPa: 600, yieldMPa: 660, tensileMPa: 830, had: 'read' },
  { name: '9.8', standard: 'ISO 898-1', upToMm: 16, proofMPa: 650, yieldMPa: 720, tensileMPa: 900, had: 'read' },
  { name: '10.9', standard: 'ISO 898-1', proofMPa: 830, yieldMPa: 940, tensileMPa: 1040, had: 'read' },
  { name: '12.9', standard: 'ISO 898-1', proofMPa: 970, yieldMPa: 1100, tensileMPa: 1220, had: 'read' },
];

// ISO 3506-1, austenitic steels: Rm min and Rp0.2 min of the classes (from memory; the tensile strengths read in a copy of
// its designations). Class 100 came with the edition of 2020. The standard sets no proof load.
export const STAINLESS_CLASSES: readonly MetricClassRow[] = [
  { name: 'A1-50', standard: 'ISO 3506-1', upToMm: 39, yieldMPa: 210, tensileMPa: 500, had: 'from memory' },
  { name: 'A1-70', standard: 'ISO 3506-1', upToMm: 39, yieldMPa: 450, tensileMPa: 700, had: 'from memory' },
  { name: 'A1-80', standard: 'ISO 3506-1', upToMm: 39, yieldMPa: 600, tensileMPa: 800, had: 'from memory' },
  { name: 'A2-50', standard: 'ISO 3506-1', upToMm: 39, yieldMPa: 210, tensileMPa: 500, had: 'from memory' },
  { name: 'A2-70', standard: 'ISO 3506-1', upToMm: 39, yieldMPa: 450, tensileMPa: 700, had: 'from memory' },
  { name: 'A2-80', standard: 'ISO 3506-1', upToMm: 39, yieldMPa: 600, tensileMPa: 800, had: 'from memory' },
  { name: 'A3-50', standard: 'ISO 3506-1', upToMm: 39, yieldMPa: 210, tensileMPa: 500, had: 'from memory' },
  { name: 'A3-70', standard: 'ISO 3506-1', upToMm: 39, yieldMPa: 450, tensileMPa: 700, had: 'from memory' },
  { name: 'A3-80', standard: 'ISO 3506-1', upToMm: 39, yieldMPa: 600, tensileMPa: 800, had: 'from memory' },
  { name: 'A4-50', standard: 'ISO 3506-1', upToMm: 39, yieldMPa: 210, tensileMPa: 500, had: 'from memory' },
  { name: 'A4-70', standard: 'ISO 3506-1', upToMm: 39, yieldMPa: 450, tensileMPa: 700, had: 'from memory' },
  { name: 'A4-80', standard: 'ISO 3506-1', upToMm: 39, yieldMPa: 600, tensileMPa: 800, had: 'from memory' },
  { name: 'A4-100', standard: 'ISO 3506-1', upToMm: 39, yieldMPa: 800, tensileMPa: 1000, had: 'from memory' },
  { name: 'A5-50', standard: 'ISO 3506-1', upToMm: 39, yieldMPa: 210, tensileMPa: 500, had: 'from memory' },
  { name: 'A5-70', standard: 'ISO 3506-1', upToMm: 39, yieldMPa: 450, tensileMPa: 700, had: 'from memory' },
  { name: 'A5-80', standard: 'ISO 3506-1', upToMm: 39, yieldMPa: 600, tensileMPa: 800, had: 'from memory' },
  { name: 'A5-100', standard: 'ISO 3506-1', upToMm: 39, yieldMPa: 800, tensileMPa: 1000, had: 'from memory' },
];

// ASTM A193/A193M and A320/A320M, the part in SI units, studs of metric thread (from memory; the inch figures below were read).
export const METRIC_STUD_GRADES: readonly MetricClassRow[] = [
  { name: 'ASTM A193 B7', standard: 'ASTM A193', upToMm: 64, yieldMPa: 720, tensileMPa: 860, had: 'from memory' },
  { name: 'ASTM A320 L7', standard: 'ASTM A320', upToMm: 64, yieldMPa: 725, tensileMPa: 860, had: 'from memory' },
];

/** Strength of one grade over a range of sizes, figures in ksi and inches; a size belongs when above < d ≤ up to. */
export interface InchGradeRow {
  readonly name: string;
  readonly standard: 'SAE J429' | 'ASTM F3125' | 'ASTM A193' | 'ASTM A320' | 'ASTM A574';
  readonly aboveIn?: number;
  readonly upToIn: number;
  readonly proofKsi?: number;
  readonly yieldKsi: number;
  readonly tensileKsi: number;
  readonly had: Provenance;
}

// SAE J429, mechanical requirements, 1/4 to 1 1/2 in (Shigley and Mischke, 5th ed., quoted in a secondary table; read; grades 1, 4,
// 5.2, 7 and 8.2 from memory). Grade 4 is for studs alone.
// biome-ignore format: one row a line
export const INCH_GRADES: readonly InchGradeRow[] = [
  { name: 'SAE J429 grade 1', standard: 'SAE J429', upToIn: 1.5, proofKsi: 33, yieldKsi: 36, tensileKsi: 60, had: 'from memory' },
  { name: 'SAE J429 grade 2', standard: 'SAE J429', upToIn: 0.75, proofKsi: 55, yieldKsi: 57, tensileKsi: 74, had: 'read' },
  { name: 'SAE J429 grade 2', standard: 'SAE J429', aboveIn: 0.75, upToIn: 1.5, proofKsi: 33, yieldKsi: 36, tensileKsi: 60, had: 'read' },
  { name: 'SAE J429 grade 4', standard: 'SAE J429', upToIn: 1.5, proofKsi: 65, yieldKsi: 100, tensileKsi: 115, had: 'from memory' },
  { name: 'SAE J429 grade 5', standard: 'SAE J429', upToIn: 1, proofKsi: 85, yieldKsi: 92, tensileKsi: 120, had: 'read' },
  { name: 'SAE J429 grade 5', standard: 'SAE J429', aboveIn: 1, upToIn: 1.5, proofKsi: 74, yieldKsi: 81, tensileKsi: 105, had: 'read' },
  { name: 'SAE J429 grade 5.2', standard: 'SAE J429', upToIn: 1, proofKsi: 85, yieldKsi: 92, tensileKsi: 120, had: 'from memory' },
  { name: 'SAE J429 grade 7', standard: 'SAE J429', upToIn: 1.5, proofKsi: 105, yieldKsi: 115, tensileKsi: 133, had: 'from memory' },
  { name: 'SAE J429 grade 8', standard: 'SAE J429', upToIn: 1.5, proofKsi: 120, yieldKsi: 130, tensileKsi: 150, had: 'read' },
  { name: 'SAE J429 grade 8.2', standard: 'SAE J429', upToIn: 1, proofKsi: 120, yieldKsi: 130, tensileKsi: 150, had: 'from memory' },
];

// ASTM F3125-15 and later, 1/2 to 1 1/2 in: tensile and yield strength (secondary tables, read), proof stress from memory.
// Before 2015 grade A325 was weaker above 1 in.
// ASTM A193 B7 and A320 L7 (secondary tables, read), A574 (secondary table, read): tensile, proof, yield at 0.2 % offset.
// biome-ignore format: one row a line
export const BOLTING_GRADES: readonly InchGradeRow[] = [
  { name: 'ASTM F3125 A325', standard: 'ASTM F3125', aboveIn: 0.4375, upToIn: 1.5, proofKsi: 85, yieldKsi: 92, tensileKsi: 120, had: 'read' },
  { name: 'ASTM F3125 A490', standard: 'ASTM F3125', aboveIn: 0.4375, upToIn: 1.5, proofKsi: 120, yieldKsi: 130, tensileKsi: 150, had: 'read' },
  { name: 'ASTM A193 B7', standard: 'ASTM A193', upToIn: 2.5, yieldKsi: 105, tensileKsi: 125, had: 'read' },
  { name: 'ASTM A193 B7', standard: 'ASTM A193', aboveIn: 2.5, upToIn: 4, yieldKsi: 95, tensileKsi: 115, had: 'read' },
  { name: 'ASTM A320 L7', standard: 'ASTM A320', upToIn: 2.5, yieldKsi: 105, tensileKsi: 125, had: 'read' },
  { name: 'ASTM A574', standard: 'ASTM A574', upToIn: 0.5, proofKsi: 140, yieldKsi: 153, tensileKsi: 180, had: 'read' },
  { name: 'ASTM A574', standard: 'ASTM A574', aboveIn: 0.5, upToIn: 4, proofKsi: 135, yieldKsi: 153, tensileKsi: 170, had: 'read' },
];
