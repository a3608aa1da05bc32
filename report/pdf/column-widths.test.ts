import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { columnWidths } from './column-widths.ts';

fc.configureGlobal({ seed: 24 });

const extent = fc
  .tuple(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 0, max: 900 }))
  .map(([wordPt, more]) => ({ wordPt, linePt: wordPt + more }));

describe('columnWidths', () => {
  it('always fills the width', () => {
    fc.assert(
      fc.property(fc.array(extent, { minLength: 1, maxLength: 12 }), (extents) => {
        expect(columnWidths(extents, 500).reduce((sum, width) => sum + width, 0)).toBeCloseTo(500, 6);
      }),
    );
  });

  it('breaks no word while all the longest words fit side by side', () => {
    fc.assert(
      fc.property(fc.array(extent, { minLength: 1, maxLength: 12 }), (extents) => {
        fc.pre(extents.reduce((sum, { wordPt }) => sum + wordPt, 0) <= 500);
        const widths = columnWidths(extents, 500);
        expect(extents.every(({ wordPt }, index) => widths[index]! >= wordPt - 1e-9)).toBe(true);
      }),
    );
  });

  it('gives what is left to the column that wants it', () => {
    expect(
      columnWidths(
        [
          { wordPt: 20, linePt: 20 },
          { wordPt: 40, linePt: 400 },
        ],
        200,
      ),
    ).toEqual([20, 180]);
  });
});
