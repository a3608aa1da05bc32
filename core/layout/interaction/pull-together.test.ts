import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pullTogether } from './pull-together.ts';
import { matrixOf, type SquareMatrix, timesVector } from './square-matrix.ts';
import { TightSet } from './tight-set.ts';

fc.configureGlobal({ seed: 24 });

/** Symmetric and positive definite: G·Gᵀ, and each bolt's own compliance; neighbours may lift each other too. */
const joints = fc.integer({ min: 4, max: 8 }).chain((size) =>
  fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: size * size, maxLength: size * size }).map((g) =>
    matrixOf(size, (i, j) => {
      let sum = i === j ? 0.2 : 0;
      for (let k = 0; k < size; k++) sum += g[i * size + k]! * g[j * size + k]!;
      return sum;
    }),
  ),
);

const forces = (count: number) => fc.array(fc.integer({ min: 1, max: 100 }), { minLength: count, maxLength: count });

/** A joint on which pulls were made, and a group of different bolts that is pulled next. */
const begun = fc.tuple(
  joints,
  fc.array(fc.tuple(fc.nat(7), fc.integer({ min: 1, max: 100 })), { maxLength: 12 }),
  fc.shuffledSubarray([0, 1, 2, 3], { minLength: 1, maxLength: 4 }),
  forces(4),
);

type Begun = typeof begun extends fc.Arbitrary<infer One> ? One : never;

function pulledBefore([matrix, pulls]: Begun): TightSet {
  const joint = new TightSet(matrix);
  for (const [pick, force] of pulls) joint.pull(pick % matrix.size, force);
  return joint;
}

const aimsOf = ([, , bolts, targets]: Begun) => bolts.map((bolt, index) => ({ bolt, forceN: targets[index]! }));

describe('several nuts turned together', () => {
  it('end where each bolt carries its target, or has not been turned and carries more', () => {
    fc.assert(
      fc.property(begun, (one) => {
        const joint = pulledBefore(one);
        const before = joint.travelMm.slice();
        const wasTight = before.map((_, bolt) => (joint.travelOf(bolt) === undefined ? 0 : 1));
        const aims = aimsOf(one);
        const idle = pullTogether(joint, aims);
        const turned = aims.filter(({ bolt }) => wasTight[bolt] === 0 || joint.travelMm[bolt] !== before[bolt]);
        for (const { bolt, forceN } of aims) {
          expect(joint.forceN[bolt]).toBeGreaterThan(forceN * (1 - 1e-9));
        }
        for (const { bolt } of aims.filter((aim) => wasTight[aim.bolt])) {
          expect(joint.travelMm[bolt]! - before[bolt]!).toBeGreaterThan(-1e-9);
        }
        for (const { bolt, forceN } of turned) expect(joint.forceN[bolt]! / forceN).toBeCloseTo(1, 8);
        expect(idle).toBe(aims.length - turned.length);
      }),
    );
  });

  it('leave the others at their travels, none with a force below nothing', () => {
    fc.assert(
      fc.property(begun, (one) => {
        const joint = pulledBefore(one);
        const before = joint.travelMm.slice();
        pullTogether(joint, aimsOf(one));
        const closing = timesVector(one[0], joint.forceN);
        expect(Math.min(...joint.forceN)).toBeGreaterThanOrEqual(0);
        const others = [...before.keys()].filter((bolt) => !one[2].includes(bolt));
        for (const bolt of others) expect(joint.travelMm[bolt]).toBe(before[bolt]);
        for (const bolt of [...before.keys()].filter((each) => joint.travelOf(each) !== undefined)) {
          const slackMm = closing[bolt]! - joint.travelMm[bolt]!;
          expect(slackMm).toBeGreaterThan(-1e-7);
          expect(joint.forceN[bolt]! * slackMm).toBeLessThan(1e-4);
        }
      }),
    );
  });

  it('are one nut turned by itself where the group has one', () => {
    fc.assert(
      fc.property(begun, (one) => {
        const [bolt] = one[2];
        const [alone, group] = [pulledBefore(one), pulledBefore(one)];
        alone.pull(bolt!, one[3][0]!);
        pullTogether(group, [{ bolt: bolt!, forceN: one[3][0]! }]);
        expect([...group.forceN]).toEqual([...alone.forceN]);
        expect([...group.travelMm]).toEqual([...alone.travelMm]);
      }),
    );
  });

  it('do the work that the joint stores', () => {
    fc.assert(
      fc.property(joints, fc.array(forces(4), { minLength: 1, maxLength: 3 }), (matrix, rounds) => {
        const joint = new TightSet(matrix);
        let work = 0;
        for (const targets of rounds) work += workOf(matrix, joint, targets, 200);
        // pulls in small parts miss a little where a bolt goes slack, or takes up its slack, within a part
        expect(work / joint.storedEnergyNmm()).toBeCloseTo(1, 1.7);
      }),
      { numRuns: 40 },
    );
  });

  it('do not go on past a travel', () => {
    const joint = new TightSet(matrixOf(2, (i, j) => (i === j ? 2 : 1)));
    pullTogether(joint, [
      { bolt: 0, forceN: 100, travelMm: 90 },
      { bolt: 1, forceN: 10, travelMm: 300 },
    ]);
    // 2·F₀ + 10 = 90, short of 100 N; the other stops at its force
    expect([...joint.forceN]).toEqual([expect.closeTo(40, 9), 10]);
    expect(pullTogether(joint, [{ bolt: 0, forceN: 100, travelMm: 90 }])).toBe(1);
  });
});

/** Work of four wrenches, N·mm, while their bolts go from what they carry to targets in many small pulls. */
function workOf(matrix: SquareMatrix, joint: TightSet, targets: readonly number[], parts: number): number {
  const from = joint.forceN.slice();
  let work = 0;
  for (let part = 1; part <= parts; part++) {
    const before = joint.forceN.slice();
    // the nut of a bolt never pulled starts where the joint is closed already
    const starts = timesVector(matrix, before);
    const travels = targets.map((_, bolt) => joint.travelOf(bolt) ?? starts[bolt]!);
    pullTogether(
      joint,
      targets.map((target, bolt) => ({ bolt, forceN: from[bolt]! + ((target - from[bolt]!) * part) / parts })),
    );
    for (const bolt of targets.keys()) {
      work += ((joint.travelMm[bolt]! - travels[bolt]!) * (before[bolt]! + joint.forceN[bolt]!)) / 2;
    }
  }
  return work;
}
