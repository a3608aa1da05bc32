import { describe, expect, it } from 'vitest';
import { BEARING_STANDARDS, bearingOuterMm, clearanceHoleMm, usualBearing } from './bearing-face.ts';
import { INCH_HOLES, METRIC_HOLES } from './clearance-holes.ts';
import { FRICTION_CLASSES, LUBRICATIONS } from './friction-classes.ts';
import { HEAVY_HEX_HEADS, HEX_CAP_HEADS, STRUCTURAL_HEADS } from './inch-faces.ts';
import { BEARING_PRESSURES, MATERIALS } from './materials.ts';
import {
  HEX_HEADS,
  HEX_NUTS,
  HR_HEADS,
  HV_HEADS,
  HV_NUTS,
  PLAIN_WASHERS,
  PRELOAD_WASHERS,
  SOCKET_HEADS,
} from './metric-faces.ts';
import { NUT_CLASSES, NUTS_FOR_BOLTS } from './nut-classes.ts';
import { METRIC_CLASSES } from './property-classes.ts';
import { readThread } from './read-thread.ts';
import { EMBEDDINGS, TIGHTENING_FACTORS } from './tightening-methods.ts';

const thread = (designation: string) => {
  const read = readThread(designation);
  if (!read.ok) throw new Error(JSON.stringify(read.failure));
  return read.value;
};

const grows = (values: readonly number[]) => values.every((value, index) => value > (values[index - 1] ?? 0));

describe('tables of sizes', () => {
  it.each([
    ['hexagon heads', HEX_HEADS.map((row) => [row.threadMm, row.bearingOuterMm, row.acrossFlatsMm, row.heightMm])],
    ['hexagon nuts', HEX_NUTS.map((row) => [row.threadMm, row.bearingOuterMm, row.acrossFlatsMm, row.heightMm])],
    ['HV heads', HV_HEADS.map((row) => [row.threadMm, row.bearingOuterMm, row.acrossFlatsMm, row.heightMm])],
    ['HV nuts', HV_NUTS.map((row) => [row.threadMm, row.bearingOuterMm, row.acrossFlatsMm, row.heightMm])],
    ['HR heads', HR_HEADS.map((row) => [row.threadMm, row.bearingOuterMm, row.acrossFlatsMm, row.heightMm])],
    ['socket heads', SOCKET_HEADS.map((row) => [row.threadMm, row.bearingOuterMm, row.headDiameterMm, row.heightMm])],
    ['holes', METRIC_HOLES.map((row) => [row.threadMm, row.fineMm, row.mediumMm, row.coarseMm])],
    ['cap screws', HEX_CAP_HEADS.map((row) => [row.acrossFlatsIn, row.heightIn])],
    ['heavy hexagons', HEAVY_HEX_HEADS.map((row) => [row.acrossFlatsIn, row.heightIn])],
    ['structural heads', STRUCTURAL_HEADS.map((row) => [row.acrossFlatsIn, row.heightIn])],
    ['holes for inch bolts', INCH_HOLES.map((row) => [row.normalIn])],
  ])('grow with the thread in every column: %s', (_, rows) => {
    const columns = rows[0]?.map((_value, column) => rows.map((row) => row[column] ?? 0)) ?? [];
    expect(columns.length > 0 && columns.every(grows)).toBe(true);
  });

  it('have holes that let the bolt through and widen from fine to coarse', () => {
    for (const row of METRIC_HOLES) {
      expect(grows([row.threadMm, row.fineMm, row.mediumMm, row.coarseMm])).toBe(true);
    }
  });

  it('have bearing faces inside of the flats and outside of the widest hole', () => {
    for (const { threadMm, bearingOuterMm: outerMm, acrossFlatsMm } of [
      ...HEX_HEADS,
      ...HEX_NUTS,
      ...HV_HEADS,
      ...HR_HEADS,
    ]) {
      const hole = METRIC_HOLES.find((row) => row.threadMm === threadMm);
      expect(outerMm < acrossFlatsMm && outerMm > (hole?.coarseMm ?? 0)).toBe(true);
    }
  });

  it('have washers wider than their hole, and holes wider than the bolt', () => {
    for (const { threadMm, holeMm, outerMm, thicknessMm } of [...PLAIN_WASHERS, ...PRELOAD_WASHERS]) {
      expect(threadMm < holeMm && holeMm < outerMm && thicknessMm > 0).toBe(true);
    }
  });
});

describe('tables of strength and friction', () => {
  it('have one row of nut for each class and size', () => {
    for (const name of new Set(NUT_CLASSES.map((row) => row.name))) {
      const rows = NUT_CLASSES.filter((row) => row.name === name);
      expect(rows.map((row) => row.aboveMm)).toEqual([0, ...rows.slice(0, -1).map((row) => row.upToMm)]);
    }
  });

  it('have for each class of bolt a nut that is proven at the least strength of the bolt or near it', () => {
    for (const { boltClass, nutClass } of NUTS_FOR_BOLTS) {
      const bolt = METRIC_CLASSES.find((row) => row.name === boltClass);
      const nut = NUT_CLASSES.find((row) => row.name === nutClass && row.upToMm >= 10 && row.aboveMm < 10);
      expect((nut?.proofMPa ?? 0) / (bolt?.tensileMPa ?? Infinity)).toBeGreaterThan(0.94);
    }
  });

  it('have ranges that begin below their end', () => {
    for (const { lowest, highest = 1 } of [...FRICTION_CLASSES, ...TIGHTENING_FACTORS])
      expect(lowest < highest).toBe(true);
    for (const row of EMBEDDINGS) expect(row.roughnessAboveUm < row.roughnessUpToUm).toBe(true);
  });

  it('know every friction class that a surface is put into', () => {
    const known = new Set(FRICTION_CLASSES.map(({ name }) => name));
    expect(LUBRICATIONS.flatMap((row) => row.classes).filter((name) => !known.has(name))).toEqual([]);
  });

  it('tell each material once', () => {
    for (const names of [MATERIALS.map(({ name }) => name), BEARING_PRESSURES.map(({ name }) => name)]) {
      expect(new Set(names).size).toBe(names.length);
    }
  });
});

describe('bearingOuterMm', () => {
  it.each([
    ['ISO 4014', 'M12', 16.63],
    ['ISO 4014', 'M12x1.25', 16.63],
    ['ISO 4762', 'M12', 17.23],
    ['EN 14399-4', 'M20', 29.5],
    ['ASME B18.2.6', '3/4-10 UNC', 1.25 * 25.4 * 0.95],
    ['ISO 4014', 'M7', undefined],
    ['ISO 4014', '3/4-10 UNC', undefined],
    ['ASME B18.2.6', 'M20', undefined],
  ] as const)('of %s on %s is %s mm', (standard, designation, outerMm) => {
    expect(bearingOuterMm(standard, thread(designation))).toBe(outerMm);
  });

  it.each([
    ['M20', '10.9', 'ISO 4014'],
    ['3/4-10 UNC', 'SAE J429 grade 5', 'ASME B18.2.1 hex'],
    ['3/4-10 UNC', 'ASTM F3125 A490', 'ASME B18.2.6'],
    ['1-8 UNC', 'ASTM A193 B7', 'ASME B18.2.1 heavy hex'],
    ['2-8 UN', undefined, 'ASME B18.2.1 heavy hex'],
  ])('of %s %s is taken from %s when no head is told', (designation, className, standard) => {
    expect(usualBearing(thread(designation), className)).toBe(standard);
    expect(BEARING_STANDARDS).toContain(standard);
  });
});

describe('clearanceHoleMm', () => {
  it('is the medium series unless another is asked for', () => {
    expect(clearanceHoleMm(thread('M12'))).toBe(13.5);
    expect(clearanceHoleMm(thread('M12'), 'fine')).toBe(13);
    expect(clearanceHoleMm(thread('1/2-13 UNC'))).toBe((9 / 16) * 25.4);
    expect(clearanceHoleMm(thread('M9'))).toBeUndefined();
  });
});
