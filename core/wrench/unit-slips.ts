/** Factors between columns that tell of a unit taken for N·m. */
interface UnitSlip {
  /** A column over the one beside it. */
  readonly factor: number;
  /** As people know it. */
  readonly name: string;
  /** What the column seems to be in. */
  readonly unit: string;
}

const FOOT_POUND = 1.3558179483314;
const INCH_POUNDS = 12 / FOOT_POUND;
const KILOPOND_METRE = 9.80665;

/** One N·m is 0.7376 lbf·ft, 8.851 lbf·in, 0.10197 kgf·m; decimal units first told by their tens. */
export const UNIT_SLIPS: readonly UnitSlip[] = [
  { factor: 1 / FOOT_POUND, name: '1.356', unit: 'lbf·ft' },
  { factor: FOOT_POUND, name: '1.356', unit: 'N·m beside lbf·ft' },
  { factor: INCH_POUNDS, name: '8.85', unit: 'lbf·in' },
  { factor: 1 / INCH_POUNDS, name: '8.85', unit: 'N·m beside lbf·in' },
  { factor: 1 / KILOPOND_METRE, name: '9.81', unit: 'kgf·m' },
  { factor: KILOPOND_METRE, name: '9.81', unit: 'N·m beside kgf·m' },
  { factor: 12, name: '12', unit: 'lbf·in beside lbf·ft' },
  { factor: 1 / 12, name: '12', unit: 'lbf·ft beside lbf·in' },
  { factor: 100 / KILOPOND_METRE, name: '10.2', unit: 'kgf·cm' },
  { factor: 1000, name: '1000', unit: 'mN·m' },
  { factor: 100, name: '100', unit: 'cN·m' },
  { factor: 0.001, name: '1000', unit: 'kN·m' },
];
