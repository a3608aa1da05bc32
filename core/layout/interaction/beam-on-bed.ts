/** A straight beam on an elastic bed. */
export interface BeamOnBed {
  /** Bending stiffness, N·mm². */
  readonly bendingNmm2: number;
  /** Bed for each mm of its length, N/mm². */
  readonly bedNPerMm2: number;
}

/** β of Hetényi, 1/mm. */
export const betaOf = ({ bendingNmm2, bedNPerMm2 }: BeamOnBed): number => (bedNPerMm2 / (4 * bendingNmm2)) ** 0.25;

/**
 * How far an endless beam goes down at a distance from a unit of force, mm/N.
 *
 * @source Hetényi, Beams on Elastic Foundation (1946), endless beam under a point load: w = β/(2k)·e^(−βx)(cos βx + sin βx)
 */
export function endlessBeam(beam: BeamOnBed, distanceMm: number): number {
  const beta = betaOf(beam);
  const x = beta * Math.abs(distanceMm);
  return (beta / (2 * beam.bedNPerMm2)) * Math.exp(-x) * (Math.cos(x) + Math.sin(x));
}

/**
 * The same for a beam with two free ends: the endless beam, with moments and forces at its ends that make them free.
 *
 * @param lengthMm of the beam; `atMm` and `loadMm` are counted from its left end
 * @source Hetényi, Beams on Elastic Foundation (1946), method of end-conditioning forces
 */
export function freeBeam(beam: BeamOnBed, lengthMm: number, loadMm: number): (atMm: number) => number {
  const beta = betaOf(beam);
  const shapes = endShapes(beta, lengthMm);
  const [left, right] = [endlessCurvature(beam, loadMm), endlessCurvature(beam, lengthMm - loadMm)];
  const wanted = [-left.second, left.third, -right.second, -right.third];
  const rows = [0, lengthMm].flatMap((end) => [
    shapes.map((shape) => shape(end).second),
    shapes.map((shape) => shape(end).third),
  ]);
  const amounts = solveSmall(rows, wanted);
  return (atMm) =>
    endlessBeam(beam, atMm - loadMm) + shapes.reduce((sum, shape, k) => sum + amounts[k]! * shape(atMm).value, 0);
}

interface Shape {
  readonly value: number;
  /** Second and third derivative over β² and β³. */
  readonly second: number;
  readonly third: number;
}

/** Solutions without a load that fade away from either end. */
function endShapes(beta: number, lengthMm: number): readonly ((atMm: number) => Shape)[] {
  const fading = (x: number, sense: 1 | -1, isSine: boolean): Shape => {
    const e = Math.exp(-x);
    const [c, s] = [e * Math.cos(x), e * Math.sin(x)];
    if (isSine) return { value: s, second: -2 * c, third: sense * 2 * (c + s) };
    return { value: c, second: 2 * s, third: sense * 2 * (c - s) };
  };
  return [false, true].flatMap((isSine) => [
    (atMm: number) => fading(beta * atMm, 1, isSine),
    (atMm: number) => fading(beta * (lengthMm - atMm), -1, isSine),
  ]);
}

/** To the right of the force; to its left the third one has the other sign. */
function endlessCurvature(beam: BeamOnBed, distanceMm: number): { readonly second: number; readonly third: number } {
  const beta = betaOf(beam);
  const x = beta * distanceMm;
  const size = (beta / (2 * beam.bedNPerMm2)) * Math.exp(-x);
  return { second: size * 2 * (Math.sin(x) - Math.cos(x)), third: size * 4 * Math.cos(x) };
}

/** Gauss with the largest pivot of each column. */
function solveSmall(rows: readonly (readonly number[])[], right: readonly number[]): readonly number[] {
  const work = rows.map((row, i) => [...row, right[i]!]);
  const count = work.length;
  for (let k = 0; k < count; k++) {
    let best = k;
    for (let i = k + 1; i < count; i++) if (Math.abs(work[i]![k]!) > Math.abs(work[best]![k]!)) best = i;
    [work[k], work[best]] = [work[best]!, work[k]!];
    for (let i = 0; i < count; i++) {
      if (i === k) continue;
      const factor = work[i]![k]! / work[k]![k]!;
      for (let j = k; j <= count; j++) work[i]![j]! -= factor * work[k]![j]!;
    }
  }
  return work.map((row, i) => row[count]! / row[i]!);
}
