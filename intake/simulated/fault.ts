/** What can go wrong with a simulated pull. */
export const FAULTS = [
  'none',
  'crossed-thread',
  'already-tight',
  'stripped-thread',
  'yielded',
  'pulled-too-fast',
  'stopped-short',
  'over-run',
  'bottomed',
  'too-soft',
  'jerked',
  'slipped-socket',
  'two-pulls',
  'stick-slip',
  'turned-loose',
] as const;
export type Fault = (typeof FAULTS)[number];
