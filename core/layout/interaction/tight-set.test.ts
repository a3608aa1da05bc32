import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RING_OF_EIGHT, STAR_OF_EIGHT } from '../testing/ring-of-eight.ts';
import { interactionOf } from './from-interaction.ts';
import { modelled } from './model.ts';
import { modelSchema } from './model-schema.ts';
import { asCompliance, inverseOf, matrixOf, timesVector } from './square-matrix.ts';
import { TightSet } from './tight-set.ts';

fc.configureGlobal({ seed: 24 });

const bolts = STAR_OF_EIGHT.map((position) => position - 1);
const ring = modelled(RING_OF_EIGHT);
const soft = ring.ok ? ring.value.first : matrixOf(0, () => 0);

/** Positive definite: neighbours at random distances along a line. */
const joints = fc.array(fc.double({ min: 0.1, max: 3, noNaN: true }), { minLength: 1, maxLength: 8 }).map((steps) => {
  const at = steps.map((_, i) => steps.slice(0, i + 1).reduce((sum, step) => sum + step, 0));
  return matrixOf(at.length, (i, j) => Math.exp(-Math.abs(at[i]! - at[j]!)) + (i === j ? 0.05 : 0));
});

/** What the wrench works while a bolt goes from one force to another in many small pulls, N·mm. */
function workOf(joint: TightSet, bolt: number, targetN: number, parts: number): number {
  const fromN = joint.forceN[bolt]!;
  if (fromN >= targetN) return 0;
  let work = 0;
  for (let part = 1; part <= parts; part++) {
    const before = joint.forceN[bolt]!;
    const travelMm = joint.pull(bolt, fromN + ((targetN - fromN) * part) / parts);
    work += (travelMm * (before + joint.forceN[bolt]!)) / 2;
  }
  return work;
}

describe('a joint while it is tightened', () => {
  it('stores what the wrench works, exactly where no bolt goes slack', () => {
    const joint = new TightSet(soft);
    const work = [100, 100].flatMap((target) => bolts.map((bolt) => workOf(joint, bolt, target, 1)));
    const sum = work.reduce((a, b) => a + b, 0);
    expect(sum / joint.storedEnergyNmm()).toBeCloseTo(1, 12);
  });

  it('holds each bolt at its travel or slack in any joint that is let in, near to singular too', () => {
    const nearlySingular = fc.record({
      rows: fc.array(fc.tuple(fc.integer({ min: -99, max: 99 }), fc.integer({ min: -99, max: 99 })), {
        minLength: 4,
        maxLength: 9,
      }),
      powerOfTen: fc.double({ min: -12, max: 0, noNaN: true }),
    });
    fc.assert(
      fc.property(nearlySingular, ({ rows, powerOfTen }) => {
        const dot = (a: readonly number[], b: readonly number[]) =>
          a.reduce((sum, one, k) => sum + Math.sin(one) * Math.sin(b[k]!), 0);
        const own = 10 ** powerOfTen;
        const read = asCompliance(
          matrixOf(rows.length, (i, j) => dot(rows[i]!, rows[j]!) + (i === j ? own : 0)),
          'm',
        );
        if (!read.ok) return;
        const joint = new TightSet(read.value);
        for (const targetN of [50, 100]) {
          for (let bolt = rows.length - 1; bolt >= 0; bolt--) joint.pull(bolt, targetN + bolt);
        }
        const largest = Math.max(...joint.forceN);
        const closing = timesVector(read.value, joint.forceN);
        for (const [bolt, force] of joint.forceN.entries()) {
          const off =
            (closing[bolt]! - joint.travelMm[bolt]!) / (largest * read.value.values[bolt * (rows.length + 1)]!);
          expect(force).toBeGreaterThanOrEqual(0);
          expect(force > 0 ? Math.abs(off) : -off).toBeLessThan(1e-5);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('stores what the wrench works in any joint, slack bolts too', () => {
    fc.assert(
      fc.property(
        joints,
        fc.array(fc.double({ min: 1, max: 100, noNaN: true }), { minLength: 1, maxLength: 4 }),
        (matrix, targets) => {
          const joint = new TightSet(matrix);
          let work = 0;
          for (const target of targets) {
            for (let bolt = 0; bolt < matrix.size; bolt++) work += workOf(joint, bolt, target * (1 + (bolt % 3)), 400);
          }
          // pulls in small parts miss a little where a bolt goes slack, or takes up its slack, within a part
          expect(work / joint.storedEnergyNmm()).toBeCloseTo(1, 2);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('holds each tight bolt either at its travel or slack above it', () => {
    fc.assert(
      fc.property(joints, fc.array(fc.nat(1000), { minLength: 3, maxLength: 30 }), (matrix, picks) => {
        const joint = new TightSet(matrix);
        const pulled = new Set<number>();
        for (const pick of picks) {
          const bolt = pick % matrix.size;
          joint.pull(bolt, 1 + (pick % 97));
          pulled.add(bolt);
          const closing = timesVector(matrix, joint.forceN);
          for (const tight of pulled) {
            const gap = closing[tight]! - joint.travelMm[tight]!;
            expect(gap).toBeGreaterThan(-1e-8);
            expect(joint.forceN[tight]! * gap).toBeLessThan(1e-6);
          }
        }
      }),
    );
  });

  it('does not go on past a travel, nor past a force', () => {
    const joint = new TightSet(soft);
    joint.raise(0, 1e-9, 100);
    expect(joint.travelMm[0]).toBeCloseTo(1e-9, 20);
    joint.raise(0, 1, 100);
    expect(joint.forceN[0]).toBe(100);
  });
});

describe('a ring with even spacing', () => {
  it('has a compliance and coefficients of which each row is the one above, shifted by one', () => {
    for (const { size, values } of [soft, interactionOf(soft)]) {
      for (let i = 0; i < size; i++) {
        for (let j = 0; j < size; j++) {
          const before = values[((i + 1) % size) * size + ((j + 1) % size)]!;
          expect(values[i * size + j]! / before).toBeCloseTo(1, 8);
        }
      }
    }
  });

  it('comes to the stiffness of a rigid ring where it hardly bends', () => {
    // translation and two tilts on a bed of the same circle: C(0) = (1 + 2)/(2πRk)
    const stiff = modelled({
      ...RING_OF_EIGHT,
      modulusMPa: 1e7,
      heightMm: 400,
      boltCircleMm: 240.001,
      gasketOuterMm: 254,
      gasketInnerMm: 226,
      gasketThicknessMm: 28,
    });
    const bed = (2 * RING_OF_EIGHT.gasketMPa * 14) / 28;
    const first = stiff.ok ? stiff.value.first.values[0]! - 1 / RING_OF_EIGHT.boltNPerMm : 0;
    expect((first * Math.PI * 120 * bed) / 3).toBeCloseTo(1, 2);
  });
});

it('inverts what is symmetric and positive definite', () => {
  fc.assert(
    fc.property(joints, (matrix) => {
      const inverse = inverseOf(matrix);
      const unit = Float64Array.from({ length: matrix.size }, (_, i) => (i === 0 ? 1 : 0));
      const back = inverse && timesVector(matrix, timesVector(inverse, unit));
      back?.forEach((one, i) => expect(one).toBeCloseTo(unit[i]!, 9));
    }),
  );
});

describe('models', () => {
  const bar = {
    kind: 'strip',
    count: 5,
    spacingMm: 90,
    endMm: 45,
    widthMm: 60,
    heightMm: 40,
    modulusMPa: 200_000,
    bedNPerMm3: 8,
    boltNPerMm: 1e6,
  } as const;

  it.each<[string, object, string]>([
    ['a bore as wide as the flange', { ...RING_OF_EIGHT, innerMm: 290 }, 'model.innerMm'],
    ['a bolt circle off the flange', { ...RING_OF_EIGHT, boltCircleMm: 300 }, 'model.boltCircleMm'],
    ['a gasket without a face', { ...RING_OF_EIGHT, gasketInnerMm: 240 }, 'model.gasketInnerMm'],
    ['a gasket past the flange', { ...RING_OF_EIGHT, gasketOuterMm: 300 }, 'model.gasketOuterMm'],
    ['a gasket in the bore', { ...RING_OF_EIGHT, gasketOuterMm: 190, gasketInnerMm: 180 }, 'model.gasketOuterMm'],
    ['a gasket of next to nothing', { ...RING_OF_EIGHT, gasketMPa: 1e-300 }, 'model'],
    ['a bar that no bed holds', { ...bar, heightMm: 1000, spacingMm: 1, bedNPerMm3: 1e-6 }, 'model'],
    ['a gasket that is softer when let go', { ...RING_OF_EIGHT, gasketUnloadingMPa: 1 }, 'model.gasketUnloadingMPa'],
    ['a bed that is softer when let go', { ...bar, bedUnloadingNPerMm3: 1 }, 'model.bedUnloadingNPerMm3'],
    ['a bolt on no strip', { ...bar, count: 1, endMm: 0 }, 'model.endMm'],
    [
      'neighbours that take part too much',
      { kind: 'neighbours', arrangement: 'circle', count: 9, neighbour: 0.9, decay: -0.9 } as const,
      'model.neighbour',
    ],
    [
      'bolts in one point',
      {
        kind: 'plate',
        layout: {
          kind: 'points',
          points: [
            { xMm: 0, yMm: 0 },
            { xMm: 5, yMm: 0 },
            { xMm: 0, yMm: 0 },
          ],
        },
        heightMm: 20,
        modulusMPa: 200_000,
        poisson: 0.3,
        bedNPerMm3: 10,
        boltNPerMm: 1e6,
      } as const,
      'model.layout.points[2]',
    ],
  ])('refuse %s', (_, model, field) => {
    expect(modelled(modelSchema.parse(model))).toMatchObject({ ok: false, failure: { field } });
  });

  it('let a strip give way more at its ends than in its middle', () => {
    const strip = modelled({ ...bar, endMm: 5 });
    const [end, , middle] = strip.ok ? [0, 1, 2].map((i) => strip.value.first.values[i * 6]!) : [];
    expect(end).toBeGreaterThan(middle ?? 1);
  });

  it('are stiffer from the second round on where the gasket is', () => {
    const pressed = modelled({ ...RING_OF_EIGHT, gasketUnloadingMPa: 20_000 });
    expect(pressed.ok && pressed.value.later!.values[0]! < pressed.value.first.values[0]!).toBe(true);
  });
});
