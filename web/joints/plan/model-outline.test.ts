import { type InteractionModel, type Layout, layoutSchema, modelSchema } from '@clampwright/core/layout';
import { describe, expect, it } from 'vitest';
import { modelOutline } from './model-outline.ts';

const circle: Layout = layoutSchema.parse({ kind: 'circle', count: 8, diameterMm: 260 });
const grid: Layout = layoutSchema.parse({ kind: 'rectangle', rows: 2, columns: 3, pitchXMm: 100, pitchYMm: 80 });
const outline = (model: object, layout: Layout) => {
  const read: InteractionModel = modelSchema.parse({ boltNPerMm: 6e5, ...model });
  return modelOutline(read, layout);
};
/** What reaches furthest to the left of each closed line of a path. */
const leftsOf = (path = '') => [...path.matchAll(/M(-?[\d.]+)/g)].map(([, left]) => Number(left));

const COVER = { kind: 'plate', heightMm: 20, edgeMm: 25, bedNPerMm3: 50 };

describe('the outline of a model', () => {
  it('of a flange is its ring with the gasket', () => {
    const flange = {
      kind: 'ring',
      count: 8,
      boltCircleMm: 260,
      outerMm: 300,
      innerMm: 190,
      heightMm: 35,
      gasketOuterMm: 230,
      gasketInnerMm: 200,
      gasketThicknessMm: 3,
      gasketMPa: 400,
    };
    const drawn = outline(flange, circle);
    expect(leftsOf(drawn?.part)).toEqual([-150, -95]);
    expect(leftsOf(drawn?.bed)).toEqual([-115, -100]);
    expect(drawn?.bolts).toHaveLength(8);
  });

  it('of a cover goes past its outermost bolts, with its bed', () => {
    const drawn = outline({ ...COVER, layout: grid, bedFromEdgeMm: 10, bedWidthMm: 30 }, grid);
    expect(leftsOf(drawn?.part)).toEqual([-125]);
    expect(leftsOf(drawn?.bed)).toEqual([-115, -85]);
    expect(leftsOf(outline({ ...COVER, layout: circle }, circle)?.bed)).toEqual([-155]);
  });

  it('of a bar has its free ends', () => {
    const bar = { kind: 'strip', count: 3, spacingMm: 90, endMm: 40, widthMm: 50, heightMm: 20, bedNPerMm3: 10 };
    const line: Layout = layoutSchema.parse({ kind: 'line', count: 3, pitchMm: 90 });
    expect(leftsOf(outline(bar, line)?.part)).toEqual([-130]);
  });

  it('is not there where no shape is told', () => {
    expect(outline({ ...COVER, layout: grid, edgeMm: undefined }, grid)).toBeUndefined();
    const figures = { kind: 'neighbours', arrangement: 'circle', count: 8, neighbour: 0.2, decay: 0.1 };
    expect(modelOutline(modelSchema.parse(figures), circle)).toBeUndefined();
  });
});
