/** How we have a published value: seen in a copy of its source, a rule of the trade, remembered, or made by a program. */
export type HowWeHaveIt = 'read' | 'common practice' | 'from memory' | `computed with ${string} ${string}`;

/**
 * A value as printed. Its digits are the tolerance: half a unit in the last place, or in the last of `significant`
 * figures where trailing zeros hide it. `relative` and `absolute` widen that and want a reason.
 */
export type Published = {
  readonly value: string;
  readonly unit: string;
  readonly significant?: number;
  /** What the source prints in error; `value` is then the correction, and `because` says why. */
  readonly misprint?: string;
} & (
  | { readonly relative?: never; readonly absolute?: never; readonly because?: string }
  | { readonly relative: number; readonly absolute?: never; readonly because: string }
  | { readonly relative?: never; readonly absolute: number; readonly because: string }
);

export interface Check {
  readonly name: string;
  readonly ours: () => number | string;
  readonly theirs: Published;
}

export interface Source {
  readonly source: string;
  readonly howWeHaveIt: HowWeHaveIt;
  readonly checks: readonly Check[];
}

/** One value of ours beside a published one. Orders and refusals are compared as text. */
export const check = (name: string, ours: () => number | string, theirs: Published): Check => ({ name, ours, theirs });

/** The checks that one source gives. */
export const describeSource = (source: string, howWeHaveIt: HowWeHaveIt, checks: readonly Check[]): Source => ({
  source,
  howWeHaveIt,
  checks,
});

/** What came of a check, ready to be shown. */
export interface Outcome {
  readonly holds: boolean;
  readonly ours: string;
  readonly theirs: string;
  /** Relative for numbers, percent; empty for text. */
  readonly difference: string;
}

const NUMBER = /^-?\d+(?:\.\d+)?(?:e-?\d+)?$/;

/** Runs a check; whatever is thrown counts as a miss. */
export function outcomeOf({ ours, theirs }: Check): Outcome {
  const got = attempt(ours);
  if (typeof got !== 'number' || !NUMBER.test(theirs.value)) {
    return { holds: String(got) === theirs.value, ours: String(got), theirs: theirs.value, difference: '' };
  }
  const published = Number(theirs.value);
  const holds =
    isClose(got, theirs.value, theirs) && (theirs.misprint === undefined || !isClose(got, theirs.misprint, theirs));
  const share = published === 0 ? got : (got - published) / Math.abs(published);
  return {
    holds,
    ours: String(Number(got.toPrecision(10))),
    theirs: theirs.value,
    difference: `${(share * 100).toFixed(4).replace(/^-(?=0\.0*$)/, '')} %`,
  };
}

function attempt(ours: () => number | string): number | string {
  try {
    return ours();
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

/** Binary fractions fall short of printed halves by less than this. */
const LAST_BIT = 1e-12;

function isClose(ours: number, printed: string, { relative, absolute, significant }: Published): boolean {
  const published = Number(printed);
  const tolerance =
    relative === undefined ? (absolute ?? halfUnit(printed, significant)) : relative * Math.abs(published);
  return Math.abs(ours - published) <= tolerance + LAST_BIT * Math.abs(published);
}

/** Half a unit in the last place of a printed number. */
export function halfUnit(printed: string, significant?: number): number {
  const [mantissa = '', exponent = '0'] = printed.split('e');
  if (significant !== undefined) {
    const leading = Number(Math.abs(Number(printed)).toExponential().split('e')[1]);
    return 0.5 * 10 ** (leading - significant + 1);
  }
  return 0.5 * 10 ** (Number(exponent) - (mantissa.split('.')[1]?.length ?? 0));
}
