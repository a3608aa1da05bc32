export { type Description, describe } from './describe.ts';
export { DISTRIBUTIONS, type Distribution, HALF_WIDTH } from './distribution.ts';
export {
  drawnResults,
  type Model,
  type MonteCarloInput,
  type MonteCarloResult,
  monteCarlo,
  type Uncertain,
} from './monte-carlo.ts';
export { shareBelow, Z_95 } from './normal-probability.ts';
export { coverageIntervals, type Interval } from './order-statistics.ts';
export { type Correlations, type Propagated, propagate, type Sensitive } from './propagate.ts';
