import { frustumMmPerN, sleeveMmPerN } from './spring.ts';

/** One plate or washer of the grip, seen from the bolt. */
export interface Layer {
  readonly name: string;
  readonly thicknessMm: number;
  readonly modulusMPa: number;
  readonly holeMm: number;
  /** Infinite where the part is so wide that its edge does not count. */
  readonly outerMm: number;
}

/** A piece of one layer in which the force flows as a cone or, once it has reached the edge, as a sleeve. */
export interface Piece {
  readonly part: string;
  readonly shape: 'cone' | 'sleeve';
  readonly lengthMm: number;
  readonly fromMm: number;
  readonly toMm: number;
  readonly holeMm: number;
  readonly modulusMPa: number;
  readonly complianceMmPerN: number;
}

/** Where the force enters the parts: the bearing circles, and whether it also enters from the nut's side. */
export interface Bearing {
  readonly headMm: number;
  /** Absent in a tapped joint, where one cone reaches through to the thread. */
  readonly nutMm?: number | undefined;
}

/**
 * The pieces of the body under pressure, from head to nut.
 *
 * @param layers  from head to nut
 * @param bearing diameters of the bearing circles; cones from both sides meet where they are equally wide
 * @param tangent of the half angle of the cones, above 0
 */
export function pressureBody(layers: readonly Layer[], bearing: Bearing, tangent: number): readonly Piece[] {
  const gripMm = layers.reduce((sum, { thicknessMm }) => sum + thicknessMm, 0);
  if (bearing.nutMm === undefined) return spread(layers, bearing.headMm, tangent);
  const meetMm = gripMm / 2 + (bearing.nutMm - bearing.headMm) / (4 * tangent);
  const depthMm = Math.min(Math.max(meetMm, 0), gripMm);
  const fromNut = spread(cut([...layers].toReversed(), gripMm - depthMm), bearing.nutMm, tangent);
  return [...spread(cut(layers, depthMm), bearing.headMm, tangent), ...fromNut.toReversed()];
}

/** The layers down to a depth; the one that is cut keeps its upper share. */
function cut(layers: readonly Layer[], depthMm: number): readonly Layer[] {
  let leftMm = depthMm;
  return layers.flatMap((layer) => {
    const thicknessMm = Math.min(layer.thicknessMm, leftMm);
    leftMm -= thicknessMm;
    return thicknessMm > 0 ? [{ ...layer, thicknessMm }] : [];
  });
}

/** From a bearing circle down: a cone as far as there is material around it, then a sleeve. */
function spread(layers: readonly Layer[], bearingMm: number, tangent: number): readonly Piece[] {
  let widthMm = bearingMm;
  return layers.flatMap((layer) => {
    const narrowMm = Math.min(widthMm, layer.outerMm);
    const coneMm = Math.min(layer.thicknessMm, (layer.outerMm - narrowMm) / (2 * tangent));
    widthMm = narrowMm + 2 * coneMm * tangent;
    return [coneOf(layer, coneMm, narrowMm, tangent), sleeveOf(layer, layer.thicknessMm - coneMm, widthMm)].filter(
      ({ lengthMm }) => lengthMm > 0,
    );
  });
}

function coneOf({ name, holeMm, modulusMPa }: Layer, lengthMm: number, narrowMm: number, tangent: number): Piece {
  const complianceMmPerN = frustumMmPerN(narrowMm, tangent, { lengthMm, modulusMPa, holeMm });
  const toMm = narrowMm + 2 * lengthMm * tangent;
  return { part: name, shape: 'cone', lengthMm, fromMm: narrowMm, toMm, holeMm, modulusMPa, complianceMmPerN };
}

function sleeveOf({ name, holeMm, modulusMPa }: Layer, lengthMm: number, outerMm: number): Piece {
  const complianceMmPerN = sleeveMmPerN(outerMm, { lengthMm, modulusMPa, holeMm });
  return {
    part: name,
    shape: 'sleeve',
    lengthMm,
    fromMm: outerMm,
    toMm: outerMm,
    holeMm,
    modulusMPa,
    complianceMmPerN,
  };
}

/** Compliances in a row add up. */
export const inSeries = (parts: readonly { readonly complianceMmPerN: number }[]): number =>
  parts.reduce((sum, { complianceMmPerN }) => sum + complianceMmPerN, 0);
