export { andersonDarling } from './anderson-darling.ts';
export { cpkInterval, cpkLowerLimit, indicesOf } from './capability.ts';
export { type CapabilityStudy, capabilityStudy } from './capability-study.ts';
export { type CensoredFit, censoredFit, type Observation, shareLeft, timeOf } from './censored-fit.ts';
export { type ControlChart, controlChart, RUN_RULES, type RunRule, type Signal } from './control-chart.ts';
export { type Description, describe } from './describe.ts';
export { DISTRIBUTIONS, type Distribution, HALF_WIDTH } from './distribution.ts';
export type { Continuous } from './distributions/continuous.ts';
export { fisherF } from './distributions/fisher-f.ts';
export { chiSquare, gamma } from './distributions/gamma.ts';
export { normal, shareAbove, shareBelow, Z_95 } from './distributions/normal.ts';
export { studentT } from './distributions/student-t.ts';
export { exponential, weibull } from './distributions/weibull.ts';
export { crossingOf, linearTrend, type Trend, type TrendPoint, trendAt } from './linear-trend.ts';
export {
  drawnResults,
  type Model,
  type MonteCarloInput,
  type MonteCarloResult,
  monteCarlo,
  type Uncertain,
} from './monte-carlo.ts';
export { coverageIntervals, type Interval } from './order-statistics.ts';
export {
  type Component,
  type Correlations,
  effectiveDegrees,
  type Propagated,
  propagate,
  type Sensitive,
} from './propagate.ts';
export { median, medianDeviation } from './robust.ts';
export { shapiroWilk } from './shapiro-wilk.ts';
export { logGamma } from './special/log-gamma.ts';
