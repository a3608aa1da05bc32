import type { Failure } from '@clampwright/core/failure';
import type { RoundTargets, SearchProgress } from '@clampwright/core/layout';

/* What the page and the worker of plans say to each other. */

export type PlanQuestion =
  | { readonly kind: 'search'; readonly request: unknown }
  | { readonly kind: 'scatter'; readonly request: unknown };

export type Scatter = NonNullable<RoundTargets['scatter']>;

export type PlanAnswer =
  | { readonly kind: 'progress'; readonly progress: SearchProgress }
  | { readonly kind: 'found'; readonly order: readonly number[]; readonly rounds: number }
  | { readonly kind: 'scattered'; readonly scatter: Scatter }
  | { readonly kind: 'refused'; readonly failure: Failure };
