/** One measurement beside its peer, taken in the same run. */
export interface BenchResult {
  readonly name: string;
  readonly ours: number;
  readonly peer: number;
  readonly unit: string;
  /** Ours over peer. */
  readonly ratio: number;
  /** What the peer is and how it was measured. */
  readonly note: string;
}
