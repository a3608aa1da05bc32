/** One of a unit in another, exact decimals. 1 lb = 0.45359237 kg, 1 in = 25.4 mm, standard gravity 9.80665 m/s². */
type Factors = readonly (readonly [from: string, to: string, exact: string])[];

// Exact by definition; decimals read in copies that cite NIST SP 811.
export const FACTORS_READ: Factors = [
  ['lbf', 'N', '4.4482216152605'],
  ['lbf.ft', 'N.m', '1.35581794833140040'],
  ['lbf.in', 'N.m', '0.11298482902761670'],
  ['ozf.in', 'N.m', '0.00706155181422604375'],
  ['kgf.m', 'N.m', '9.80665'],
  ['in', 'mm', '25.4'],
];

// Exact by definition. From memory.
export const FACTORS_REMEMBERED: Factors = [
  ['kgf.cm', 'N.m', '0.0980665'],
  ['dN.m', 'N.m', '0.1'],
  ['cN.m', 'N.m', '0.01'],
  ['kN.m', 'N.m', '1000'],
  ['kgf', 'N', '9.80665'],
  ['ksi', 'MPa', '6.894757293168361336722673'],
  ['turn', 'deg', '360'],
];

// NIST SP 811:2008, appendix B.8, seven figures. From memory.
export const NIST_FACTORS: Factors = [
  ['lbf.ft', 'N.m', '1.355818'],
  ['lbf.in', 'N.m', '1.129848e-1'],
  ['ozf.in', 'N.m', '7.061552e-3'],
  ['kgf.m', 'N.m', '9.80665'],
  ['lbf', 'N', '4.448222'],
  ['psi', 'MPa', '6.894757e-3'],
];
