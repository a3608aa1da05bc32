import { invalid, ok, type Result } from '../../failure/failure.ts';
import type { Model, Uncertain } from '../../statistics/monte-carlo.ts';
import type { ThreadAndBearing } from '../torque/thread-and-bearing.ts';
import { COS_HALF_FLANK } from '../torque/thread-and-bearing.ts';
import { staysPositive, type Told } from './told.ts';

/** The quantities that a preload follows from, by the names of the input; exact ones have no uncertainty. */
export interface PreloadTold {
  readonly torqueNm: Told;
  readonly prevailingTorqueNm: Told;
  readonly threadFriction?: Told | undefined;
  readonly bearingFriction?: Told | undefined;
  readonly nutFactor?: Told | undefined;
  readonly pitchDiameterMm?: Told | undefined;
  readonly bearingOuterMm?: Told | undefined;
  readonly holeMm?: Told | undefined;
}

/** A model of the preload: quantities in the order of its columns, the loop over draws, and its partial derivatives. */
export interface PreloadModel {
  readonly names: readonly string[];
  readonly quantities: readonly Uncertain[];
  readonly model: Model;
  readonly sensitivities: readonly number[];
}

/**
 * The model by the long form of the torque equation, or by the nut factor where that was told.
 *
 * @param geometry as it was looked up; the quantities told go before it
 * @source ISO 16047:2005, solved for the preload; derivatives by hand
 */
export function preloadModel(told: PreloadTold, geometry: ThreadAndBearing): Result<PreloadModel> {
  const named: readonly (readonly [string, Told])[] =
    told.nutFactor === undefined
      ? [
          ['torqueNm', told.torqueNm],
          ['prevailingTorqueNm', told.prevailingTorqueNm],
          ['threadFriction', told.threadFriction ?? 0],
          ['bearingFriction', told.bearingFriction ?? 0],
          ['pitchDiameterMm', told.pitchDiameterMm ?? geometry.pitchDiameterMm],
          ['bearingOuterMm', told.bearingOuterMm ?? geometry.bearingOuterMm],
          ['holeMm', told.holeMm ?? geometry.holeMm],
        ]
      : [
          ['torqueNm', told.torqueNm],
          ['prevailingTorqueNm', told.prevailingTorqueNm],
          ['nutFactor', told.nutFactor],
        ];
  const quantities: Uncertain[] = [];
  for (const [name, quantity] of named) {
    const read = staysPositive(quantity, name);
    if (!read.ok) return read;
    quantities.push(read.value);
  }
  const [torque, prevailing] = quantities.map(({ value }) => value);
  if (torque! <= prevailing!) {
    const message = `The torque of ${torque} N·m is no more than the prevailing torque, so that nothing is left to clamp.`;
    return invalid('torqueNm', message, `more than ${prevailing} N·m`);
  }
  const form = told.nutFactor === undefined ? longForm(geometry, quantities) : shortForm(geometry, quantities);
  return ok({ names: named.map(([name]) => name), quantities, ...form });
}

type Form = Pick<PreloadModel, 'model' | 'sensitivities'>;

/** F = 1000·(T − T_p)/(P/(2π) + μ_G·d2/(2·cos 30°) + μ_K·(D_o + d_h)/4) */
function longForm({ pitchMm }: ThreadAndBearing, quantities: readonly Uncertain[]): Form {
  const pitchArmMm = pitchMm / (2 * Math.PI);
  const perFlank = 1 / (2 * COS_HALF_FLANK);
  const [torque, prevailing, thread, bearing, pitchDiameter, outer, hole] = valuesOf(quantities);
  const armMm = pitchArmMm + thread * pitchDiameter * perFlank + (bearing * (outer + hole)) / 4;
  const preloadN = (1000 * (torque - prevailing)) / armMm;
  const perArm = -preloadN / armMm;
  return {
    model: (columns, results, from, count) => {
      const [t, p, g, k, d2, o, h] = sevenOf(columns);
      for (let i = 0; i < count; i++) {
        results[from + i] =
          (1000 * (t[i]! - p[i]!)) / (pitchArmMm + perFlank * g[i]! * d2[i]! + 0.25 * k[i]! * (o[i]! + h[i]!));
      }
    },
    sensitivities: [
      1000 / armMm,
      -1000 / armMm,
      perArm * pitchDiameter * perFlank,
      (perArm * (outer + hole)) / 4,
      perArm * thread * perFlank,
      (perArm * bearing) / 4,
      (perArm * bearing) / 4,
    ],
  };
}

/** F = 1000·(T − T_p)/(K·d) */
function shortForm({ majorDiameterMm }: ThreadAndBearing, quantities: readonly Uncertain[]): Form {
  const [torque, prevailing, nutFactor] = valuesOf(quantities);
  const armMm = nutFactor * majorDiameterMm;
  return {
    model: (columns, results, from, count) => {
      const [t, p, k] = sevenOf(columns);
      for (let i = 0; i < count; i++) results[from + i] = (1000 * (t[i]! - p[i]!)) / (k[i]! * majorDiameterMm);
    },
    sensitivities: [1000 / armMm, -1000 / armMm, (-1000 * (torque - prevailing)) / (armMm * nutFactor)],
  };
}

type Seven<T> = readonly [T, T, T, T, T, T, T];

const valuesOf = (quantities: readonly Uncertain[]): Seven<number> => {
  const at = (index: number): number => quantities[index]?.value ?? 0;
  return [at(0), at(1), at(2), at(3), at(4), at(5), at(6)];
};

const NONE = new Float64Array(0);

const sevenOf = (columns: readonly Float64Array[]): Seven<Float64Array> => {
  const at = (index: number): Float64Array => columns[index] ?? NONE;
  return [at(0), at(1), at(2), at(3), at(4), at(5), at(6)];
};
