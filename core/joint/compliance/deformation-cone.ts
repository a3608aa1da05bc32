export type JointType = 'through' | 'tapped';

/** The cone that stands for the pressure in the parts. */
export interface DeformationCone {
  /** tan φ. */
  readonly tangent: number;
  /** β_L = l_K/d_W. */
  readonly slenderness: number;
  /** y = D'_A/d_W. */
  readonly width: number;
  /** D_A,Gr, from which on the parts are wide enough for a whole cone. */
  readonly limitDiameterMm: number;
  readonly form: 'cone' | 'cone-and-sleeve' | 'sleeve';
}

/** Beyond this ratio the fit to tan φ is not trusted here; a wider part hardly carries more. */
const WIDEST = 10;

/**
 * Half angle of the deformation cone and where it ends.
 *
 * @param gripMm    l_K, with washers
 * @param bearingMm d_W; in a through joint the smaller of the two
 * @param outerMm   D'_A of the narrowest clamped part; infinite: just as wide as the cone wants
 * @source VDI 2230-1:2015, (5.1/23) and (5.1/26) to (5.1/29)
 */
export function deformationCone(
  jointType: JointType,
  gripMm: number,
  bearingMm: number,
  outerMm: number,
): DeformationCone {
  const slenderness = gripMm / bearingMm;
  const ways = jointType === 'tapped' ? 2 : 1;
  const wanted = outerMm === Infinity ? selfLimited(jointType, slenderness, ways) : outerMm / bearingMm;
  const width = Math.min(Math.max(wanted, 1), WIDEST);
  const tangent = tangentOf(jointType, slenderness, width);
  const limitDiameterMm = bearingMm + ways * gripMm * tangent;
  const partial = outerMm > bearingMm ? 'cone-and-sleeve' : 'sleeve';
  return { tangent, slenderness, width, limitDiameterMm, form: outerMm >= limitDiameterMm ? 'cone' : partial };
}

const tangentOf = (jointType: JointType, slenderness: number, width: number): number =>
  jointType === 'tapped'
    ? 0.348 + 0.013 * Math.log(slenderness) + 0.193 * Math.log(width)
    : 0.362 + 0.032 * Math.log(slenderness / 2) + 0.153 * Math.log(width);

/** y of a part that ends where its cone does: y = 1 + w·β_L·tan φ(y), which draws together within few rounds. */
function selfLimited(jointType: JointType, slenderness: number, ways: number): number {
  let width = 2;
  for (let round = 0; round < 30; round++) {
    width = 1 + ways * slenderness * tangentOf(jointType, slenderness, width);
  }
  return width;
}
