import { coverShape, type InteractionModel, type Layout, type Place, places } from '@clampwright/core/layout';

/** A joint as its model has it, in mm about the middle of its bolts: paths of the part and of its bed. */
export interface ModelOutline {
  readonly part: string;
  readonly bed: string;
  readonly bolts: readonly Place[];
  /** Half of what the part measures along both axes, mm. */
  readonly half: Pair;
}

type Pair = readonly [xMm: number, yMm: number];

/** Undefined for a model that has no shape: a cover without an edge, or figures of neighbours alone. */
export function modelOutline(model: InteractionModel, layout: Layout): ModelOutline | undefined {
  const bolts = places(layout);
  switch (model.kind) {
    case 'ring': {
      const { outerMm, innerMm, gasketOuterMm, gasketInnerMm } = model;
      return {
        part: disc(outerMm / 2) + disc(innerMm / 2),
        bed: disc(gasketOuterMm / 2) + disc(gasketInnerMm / 2),
        bolts,
        half: [outerMm / 2, outerMm / 2],
      };
    }
    case 'plate': {
      const read = coverShape(model, bolts);
      if (!read.ok || !read.value) return undefined;
      const { isRound, half, bedOuter, bedInner } = read.value;
      const outline = ([x, y]: Pair) => (isRound ? disc(x) : rectangle([x, y]));
      const bed = outline(bedOuter) + (bedInner ? outline(bedInner) : '');
      return { part: outline(half), bed, bolts, half };
    }
    case 'strip': {
      const half: Pair = [((model.count - 1) * model.spacingMm) / 2 + model.endMm, model.widthMm / 2];
      return { part: rectangle(half), bed: rectangle(half), bolts, half };
    }
    case 'neighbours':
      return undefined;
  }
}

const disc = (radiusMm: number): string =>
  `M${-radiusMm} 0a${radiusMm} ${radiusMm} 0 1 0 ${2 * radiusMm} 0a${radiusMm} ${radiusMm} 0 1 0 ${-2 * radiusMm} 0z`;

const rectangle = ([x, y]: Pair): string => `M${-x} ${-y}h${2 * x}v${2 * y}h${-2 * x}z`;
