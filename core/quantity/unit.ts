/**
 * Units as a table. `exact` is how many of its quantity's first unit one of it makes, as a product or quotient of
 * exact decimals; `also` are further spellings, without the separators that `readUnit` ignores.
 */
export interface UnitRow {
  readonly name: string;
  readonly quantity: 'torque' | 'force' | 'length' | 'stress' | 'angle';
  readonly exact: string;
  readonly also: readonly string[];
}

// 1 lbf = 4.4482216152605 N, 1 in = 25.4 mm, 1 kgf = 9.80665 N: exact by definition (NIST SP 811:2008, appendix B).
export const UNITS = [
  { name: 'N·m', quantity: 'torque', exact: '1', also: ['Nm'] },
  { name: 'cN·m', quantity: 'torque', exact: '0.01', also: ['cNm'] },
  { name: 'dN·m', quantity: 'torque', exact: '0.1', also: ['dNm'] },
  { name: 'kN·m', quantity: 'torque', exact: '1000', also: ['kNm'] },
  {
    name: 'lbf·ft',
    quantity: 'torque',
    exact: '4.4482216152605*0.3048',
    also: ['lbfft', 'lbft', 'lbsft', 'ftlbf', 'ftlb', 'ftlbs'],
  },
  {
    name: 'lbf·in',
    quantity: 'torque',
    exact: '4.4482216152605*0.0254',
    also: ['lbfin', 'lbin', 'lbsin', 'inlbf', 'inlb', 'inlbs'],
  },
  { name: 'ozf·in', quantity: 'torque', exact: '4.4482216152605*0.0254/16', also: ['ozfin', 'ozin', 'inozf', 'inoz'] },
  { name: 'kgf·m', quantity: 'torque', exact: '9.80665', also: ['kgfm', 'kgm', 'mkgf'] },
  { name: 'kgf·cm', quantity: 'torque', exact: '9.80665*0.01', also: ['kgfcm', 'kgcm', 'cmkgf'] },
  { name: 'N', quantity: 'force', exact: '1', also: [] },
  { name: 'kN', quantity: 'force', exact: '1000', also: [] },
  { name: 'lbf', quantity: 'force', exact: '4.4482216152605', also: [] },
  { name: 'kgf', quantity: 'force', exact: '9.80665', also: [] },
  { name: 'mm', quantity: 'length', exact: '1', also: [] },
  { name: 'm', quantity: 'length', exact: '1000', also: [] },
  { name: 'in', quantity: 'length', exact: '25.4', also: ['inch', 'inches', '"', '″'] },
  { name: 'MPa', quantity: 'stress', exact: '1', also: ['N/mm2', 'N/mm²'] },
  { name: 'psi', quantity: 'stress', exact: '4.4482216152605/25.4/25.4', also: ['lbf/in2', 'lbf/in²'] },
  { name: 'ksi', quantity: 'stress', exact: '4448.2216152605/25.4/25.4', also: ['kip/in2', 'kip/in²'] },
  { name: 'deg', quantity: 'angle', exact: '1', also: ['°', 'degree', 'degrees'] },
  { name: 'rad', quantity: 'angle', exact: '180/3.14159265358979323846264338327950288', also: ['radian', 'radians'] },
  { name: 'turn', quantity: 'angle', exact: '360', also: ['turns', 'rev'] },
] as const satisfies readonly UnitRow[];

export type Unit = (typeof UNITS)[number]['name'];
export type Quantity = (typeof UNITS)[number]['quantity'];
export type UnitOf<Q extends Quantity> = Extract<(typeof UNITS)[number], { quantity: Q }>['name'];
export type TorqueUnit = UnitOf<'torque'>;

/** Names of the units of one quantity, in the table's order. */
export const unitsOf = (quantity: Quantity): readonly Unit[] =>
  UNITS.filter((unit) => unit.quantity === quantity).map((unit) => unit.name);

const quantityByUnit: ReadonlyMap<Unit, Quantity> = new Map(UNITS.map((unit) => [unit.name, unit.quantity]));

/** What a unit measures. */
export function quantityOf(unit: Unit): Quantity {
  const quantity = quantityByUnit.get(unit);
  if (quantity === undefined) throw new Error(`no unit ${unit}`);
  return quantity;
}

export const isTorqueUnit = (unit: Unit): unit is TorqueUnit => quantityOf(unit) === 'torque';
