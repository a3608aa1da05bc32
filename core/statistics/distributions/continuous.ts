/** A continuous distribution. */
export interface Continuous {
  readonly density: (x: number) => number;
  /** Share below x. */
  readonly below: (x: number) => number;
  /** Share above x, exact however small it is. */
  readonly above: (x: number) => number;
  /** Value with this share below it, share from 0 to 1. */
  readonly quantile: (share: number) => number;
  /** Value with this share above it, share from 0 to 1. */
  readonly quantileAbove: (share: number) => number;
}
