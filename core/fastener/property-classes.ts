/** Strength of one class over a range of sizes, figures in MPa and mm; a size belongs when above < d ≤ up to. */
export interface MetricClassRow {
  readonly name: string;
  readonly aboveMm?: number;
  readonly upToMm?: number;
  readonly proofMPa: number;
  readonly yieldMPa: number;
  readonly tensileMPa: number;
}

// ISO 898-1:2013, table 3: Rm min, ReL / Rf / Rp0.2 min, Sp,nom; 8.8 steps at 16 mm, 9.8 ends there (secondary table; 5.6 and 6.8 from memory).
export const METRIC_CLASSES: readonly MetricClassRow[] = [
  { name: '4.6', proofMPa: 225, yieldMPa: 240, tensileMPa: 400 },
  { name: '4.8', proofMPa: 310, yieldMPa: 340, tensileMPa: 420 },
  { name: '5.6', proofMPa: 280, yieldMPa: 300, tensileMPa: 500 },
  { name: '5.8', proofMPa: 380, yieldMPa: 420, tensileMPa: 520 },
  { name: '6.8', proofMPa: 440, yieldMPa: 480, tensileMPa: 600 },
  { name: '8.8', upToMm: 16, proofMPa: 580, yieldMPa: 640, tensileMPa: 800 },
  { name: '8.8', aboveMm: 16, proofMPa: 600, yieldMPa: 660, tensileMPa: 830 },
  { name: '9.8', upToMm: 16, proofMPa: 650, yieldMPa: 720, tensileMPa: 900 },
  { name: '10.9', proofMPa: 830, yieldMPa: 940, tensileMPa: 1040 },
  { name: '12.9', proofMPa: 970, yieldMPa: 1100, tensileMPa: 1220 },
];

/** Strength of one grade over a range of sizes, figures in ksi and inches; a size belongs when above < d ≤ up to. */
export interface InchGradeRow {
  readonly name: string;
  readonly aboveIn?: number;
  readonly upToIn: number;
  readonly proofKsi: number;
  readonly yieldKsi: number;
  readonly tensileKsi: number;
}

// SAE J429, mechanical requirements, 1/4 to 1 1/2 in (Shigley and Mischke, 5th ed., quoted in a secondary table; read).
export const INCH_GRADES: readonly InchGradeRow[] = [
  { name: 'SAE J429 grade 2', upToIn: 0.75, proofKsi: 55, yieldKsi: 57, tensileKsi: 74 },
  { name: 'SAE J429 grade 2', aboveIn: 0.75, upToIn: 1.5, proofKsi: 33, yieldKsi: 36, tensileKsi: 60 },
  { name: 'SAE J429 grade 5', upToIn: 1, proofKsi: 85, yieldKsi: 92, tensileKsi: 120 },
  { name: 'SAE J429 grade 5', aboveIn: 1, upToIn: 1.5, proofKsi: 74, yieldKsi: 81, tensileKsi: 105 },
  { name: 'SAE J429 grade 8', upToIn: 1.5, proofKsi: 120, yieldKsi: 130, tensileKsi: 150 },
];
