import type { Plot } from '@clampwright/core/plot';
import type { SharePart } from '../../plots/share-bar.tsx';

/** What is drawn beside a result. */
export type BenchFigure =
  | {
      readonly kind: 'plot';
      readonly title: string;
      readonly text: string;
      readonly plot: Plot;
      readonly figures: ReadonlyMap<string, string>;
    }
  | { readonly kind: 'shares' | 'bars'; readonly title: string; readonly parts: readonly SharePart[] };
