import type { Provenance } from './provenance.ts';

/** Stiffness and thermal expansion of a material at room temperature. */
export interface MaterialRow {
  readonly name: string;
  readonly elasticMPa: number;
  /** Linear, per kelvin. */
  readonly expansionPerK: number;
  readonly had: Provenance;
}

// Callister and Rethwisch, Fundamentals of Materials Science and Engineering, tables B.2 and B.6 (secondary copies, read): grey iron is
// the middle of the range printed for grades G3000 and G4000. Moduli of cast aluminium, brass, magnesium and titanium from memory.
// VDI 2230-1 works with 205 000 MPa for steel of bolts and 210 000 MPa elsewhere.
export const MATERIALS: readonly MaterialRow[] = [
  { name: 'carbon steel', elasticMPa: 207_000, expansionPerK: 11.7e-6, had: 'read' },
  { name: 'alloy steel', elasticMPa: 207_000, expansionPerK: 12.3e-6, had: 'read' },
  { name: 'austenitic steel 304', elasticMPa: 193_000, expansionPerK: 17.2e-6, had: 'read' },
  { name: 'austenitic steel 316', elasticMPa: 193_000, expansionPerK: 15.9e-6, had: 'read' },
  { name: 'grey cast iron', elasticMPa: 112_000, expansionPerK: 11.4e-6, had: 'read' },
  { name: 'ductile cast iron', elasticMPa: 169_000, expansionPerK: 11.2e-6, had: 'read' },
  { name: 'aluminium 6061', elasticMPa: 69_000, expansionPerK: 23.6e-6, had: 'read' },
  { name: 'aluminium 7075', elasticMPa: 71_000, expansionPerK: 23.4e-6, had: 'read' },
  { name: 'cast aluminium 356', elasticMPa: 72_400, expansionPerK: 21.5e-6, had: 'read' },
  { name: 'copper', elasticMPa: 115_000, expansionPerK: 17e-6, had: 'read' },
  { name: 'brass', elasticMPa: 110_000, expansionPerK: 19.9e-6, had: 'from memory' },
  { name: 'magnesium AZ91', elasticMPa: 45_000, expansionPerK: 26e-6, had: 'from memory' },
  { name: 'titanium Ti-6Al-4V', elasticMPa: 114_000, expansionPerK: 8.6e-6, had: 'from memory' },
];

/** Pressure that a clamped part bears under a head without creeping, as VDI 2230 limits it. */
export interface BearingPressureRow {
  readonly name: string;
  readonly tensileMPa: number;
  readonly limitMPa: number;
  readonly had: Provenance;
}

// VDI 2230-1:2003, table A9, limiting surface pressure at room temperature (secondary table, read). The edition of 1986 had
// about half of it for structural steel (S235: 260); where the maker gives none, the lower figure is the careful one.
export const BEARING_PRESSURES: readonly BearingPressureRow[] = [
  { name: 'S235', tensileMPa: 340, limitMPa: 490, had: 'read' },
  { name: 'E295', tensileMPa: 470, limitMPa: 710, had: 'read' },
  { name: 'S355', tensileMPa: 510, limitMPa: 760, had: 'read' },
  { name: 'C45', tensileMPa: 700, limitMPa: 630, had: 'read' },
  { name: '34CrMo4', tensileMPa: 1000, limitMPa: 870, had: 'read' },
  { name: '34CrNiMo6', tensileMPa: 1200, limitMPa: 1080, had: 'read' },
  { name: '16MnCr5', tensileMPa: 1000, limitMPa: 900, had: 'read' },
  { name: 'X5CrNi18-12', tensileMPa: 500, limitMPa: 630, had: 'read' },
  { name: 'X5CrNiMo17-12-2', tensileMPa: 510, limitMPa: 460, had: 'read' },
  { name: 'EN-GJL-250', tensileMPa: 250, limitMPa: 900, had: 'read' },
  { name: 'EN-GJS-400-15', tensileMPa: 400, limitMPa: 700, had: 'read' },
  { name: 'EN-GJS-500-7', tensileMPa: 500, limitMPa: 900, had: 'read' },
  { name: 'EN-GJS-600-3', tensileMPa: 600, limitMPa: 1000, had: 'read' },
  { name: 'EN AW-6082', tensileMPa: 290, limitMPa: 260, had: 'read' },
  { name: 'EN AW-5083', tensileMPa: 260, limitMPa: 230, had: 'read' },
  { name: 'EN AW-7075', tensileMPa: 540, limitMPa: 410, had: 'read' },
  { name: 'AlSi9Cu3, permanent mould', tensileMPa: 180, limitMPa: 220, had: 'read' },
  { name: 'AlSi9Cu3, die cast', tensileMPa: 240, limitMPa: 290, had: 'read' },
  { name: 'AlSi7Mg, heat treated', tensileMPa: 250, limitMPa: 380, had: 'read' },
  { name: 'magnesium AZ91', tensileMPa: 310, limitMPa: 280, had: 'read' },
  { name: 'titanium Ti-6Al-4V', tensileMPa: 890, limitMPa: 890, had: 'read' },
];
