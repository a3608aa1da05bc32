import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { freeBeam } from '../interaction/beam-on-bed.ts';
import { modelled } from '../interaction/model.ts';
import { type InteractionModel, modelSchema } from '../interaction/model-schema.ts';
import { plateClosing, plateFigures } from '../interaction/plate-on-bed.ts';
import { discClosing } from './free-disc.ts';
import { rectangleClosing } from './free-rectangle.ts';

fc.configureGlobal({ seed: 62 });

const plate = { heightMm: 20, modulusMPa: 200_000, poisson: 0.3, bedNPerMm3: 50 };
/** So stiff that nothing but tilting and going down is left. */
const rigid = { ...plate, heightMm: 2000 };
const [A, B] = [200, 120];
const place = fc.record({
  xMm: fc.double({ min: -A, max: A, noNaN: true }),
  yMm: fc.double({ min: -B, max: B, noNaN: true }),
});

describe('a cover with four free edges', () => {
  it('goes down and tilts like a stiff body where it hardly bends, on its whole face and on a frame', () => {
    for (const inner of [undefined, [150, 80] as const]) {
      const area = 4 * (A * B - (inner ? inner[0] * inner[1] : 0));
      const about = (own: number, cross: number, hole: number, holeCross: number) =>
        (4 / 3) * (own ** 3 * cross - hole ** 3 * holeCross);
      const [aboutY, aboutX] = [
        about(A, B, inner?.[0] ?? 0, inner?.[1] ?? 0),
        about(B, A, inner?.[1] ?? 0, inner?.[0] ?? 0),
      ];
      fc.assert(
        fc.property(place, place, (p, q) => {
          const got = rectangleClosing({ ...rigid, half: [A, B], bedOuter: [A, B], bedInner: inner }, [p, q]);
          const wanted = 1 / area + (p.xMm * q.xMm) / aboutY + (p.yMm * q.yMm) / aboutX;
          expect((got?.values[1] ?? Number.NaN) * plate.bedNPerMm3 * area).toBeCloseTo(wanted * area, 3);
        }),
        { numRuns: 4 },
      );
    }
  });

  it('is a beam with free ends where it is narrow and does not widen as it bends', () => {
    const bar = { ...plate, poisson: 0 };
    const beam = { bendingNmm2: (200_000 * 10 * 20 ** 3) / 12, bedNPerMm2: 50 * 10 };
    const got = rectangleClosing({ ...bar, half: [150, 5], bedOuter: [150, 5] }, [
      { xMm: -120, yMm: 0 },
      { xMm: 0, yMm: 0 },
      { xMm: 150, yMm: 0 },
    ]);
    const under = freeBeam(beam, 300, 30);
    [30, 150, 300].forEach((atMm, i) => {
      // across its narrow side the plate hardly bends, and that it may shows in the fourth digit
      expect((got?.values[i] ?? Number.NaN) / under(30)).toBeCloseTo(under(atMm) / under(30), 3);
    });
  });

  it('is the endless plate far from its edges', () => {
    const { lengthMm } = plateFigures(plate);
    const half = [7 * lengthMm, 7 * lengthMm] as const;
    const spots = [0, 1, 2].map((lengths) => ({ xMm: lengths * lengthMm, yMm: 0 }));
    const got = rectangleClosing({ ...plate, half, bedOuter: half }, spots);
    const endless = plateClosing(plate);
    spots.forEach(({ xMm }, i) => {
      expect(Math.abs((got?.values[i] ?? Number.NaN) - endless(xMm)) / endless(0)).toBeLessThan(0.03);
    });
  });

  it('answers alike when both axes change places', () => {
    fc.assert(
      fc.property(place, place, (p, q) => {
        const turned = [p, q].map(({ xMm, yMm }) => ({ xMm: yMm, yMm: xMm }));
        const here = rectangleClosing({ ...plate, half: [A, B], bedOuter: [A, B] }, [p, q]);
        const there = rectangleClosing({ ...plate, half: [B, A], bedOuter: [B, A] }, turned);
        expect((here?.values[1] ?? Number.NaN) * 1e6).toBeCloseTo((there?.values[1] ?? Number.NaN) * 1e6, 8);
      }),
      { numRuns: 4 },
    );
  });
});

describe('a round cover', () => {
  it('goes down and tilts like a stiff body where it hardly bends, on its whole face and on a ring', () => {
    for (const [outer, inner] of [
      [170, 0],
      [140, 110],
    ] as const) {
      const got = discClosing({ ...rigid, radiusMm: 170, bedOuterMm: outer, bedInnerMm: inner }, 150, 8);
      const area = Math.PI * (outer ** 2 - inner ** 2);
      const about = (Math.PI / 4) * (outer ** 4 - inner ** 4);
      got?.forEach((one, steps) => {
        const wanted = 1 / area + (150 ** 2 * Math.cos((Math.PI * steps) / 4)) / about;
        expect(one * plate.bedNPerMm3 * area).toBeCloseTo(wanted * area, 3);
      });
      expect(got).toHaveLength(8);
    }
  });

  it('is the endless plate far from its edge', () => {
    const { lengthMm } = plateFigures(plate);
    const radiusMm = 7 * lengthMm;
    const got = discClosing({ ...plate, radiusMm, bedOuterMm: radiusMm }, lengthMm, 6);
    const endless = plateClosing(plate);
    // a sixth of a turn apart on a circle of one length, the places are one length apart
    expect((got?.[1] ?? Number.NaN) / endless(lengthMm)).toBeCloseTo(1, 2);
  });
});

describe('a cover as a model of its joint', () => {
  const model = {
    kind: 'plate',
    layout: { kind: 'rectangle', rows: 3, columns: 4, pitchXMm: 120, pitchYMm: 100, edgeOnly: true },
    heightMm: 25,
    edgeMm: 20,
    bedNPerMm3: 50,
    boltNPerMm: 6e5,
  };
  const read = (change: object): InteractionModel => modelSchema.parse({ ...model, ...change });
  const own = (change: object) => {
    const joint = modelled(read(change));
    return joint.ok ? joint.value.first.values[0]! - 1 / 6e5 : Number.NaN;
  };

  it('gives way several times as much at its corner as an endless one', () => {
    expect(own({}) / own({ edgeMm: undefined })).toBeGreaterThan(4);
  });

  it('lies on a frame where its bed is narrow, and on its whole face where the frame closes', () => {
    expect(own({ bedFromEdgeMm: 35, bedWidthMm: 20 })).toBeGreaterThan(own({ bedFromEdgeMm: 35 }));
    expect(own({ bedWidthMm: 500 })).toBeCloseTo(own({}), 12);
  });

  it('is round about a circle of bolts', () => {
    const layout = { kind: 'circle', count: 8, diameterMm: 300, firstAngleDeg: 0, direction: 'clockwise' };
    const joint = modelled(read({ layout }));
    const values = joint.ok ? [...joint.value.first.values] : [];
    expect(values).toHaveLength(64);
    // each row is the one above, shifted by one
    expect(values[9]).toBe(values[0]);
    expect(values[10]).toBe(values[1]);
  });

  it('says of an endless cover that its edge is not told, and of one with an edge what it is', () => {
    const told = (change: object) => {
      const joint = modelled(read(change));
      return joint.ok ? joint.value.assumptions.map(({ code }) => code) : [];
    };
    expect(told({})).toContain('plate-edges');
    expect(told({ edgeMm: undefined })).toContain('plate-cover');
  });

  it.each<[string, object, string]>([
    ['a bed that begins where no edge is', { edgeMm: undefined, bedFromEdgeMm: 5 }, 'model.bedFromEdgeMm'],
    ['the width of a bed without an edge', { edgeMm: undefined, bedWidthMm: 5 }, 'model.bedWidthMm'],
    ['a bed that begins past the middle', { bedFromEdgeMm: 120 }, 'model.bedFromEdgeMm'],
    ['a sheet', { heightMm: 0.5 }, 'model.heightMm'],
  ])('refuses %s', (_, change, field) => {
    expect(modelled(read(change))).toMatchObject({ ok: false, failure: { field } });
  });
});
