import { type Remark, remark } from '../../language/mechanics/remark.ts';
import { en1090PreloadN, rcscPretensionN } from './structural-preload.ts';
import { type CodeTurn, en1090Turn, rcscTurn, type SlopedFaces } from './turn-of-nut.ts';

export const CODES = ['RCSC', 'EN 1090-2'] as const;
export type Code = (typeof CODES)[number];

/** What a code's table says to this joint. */
export interface CodeCheck {
  readonly standard: Code;
  /** Absent beyond the table, where the turn is found by test. */
  readonly angleDeg?: number;
  readonly row?: string;
  /** Preload that the turn is reckoned to reach. */
  readonly preloadN?: number;
  /** Preload that the code asks for; absent where the class is not one of its own. */
  readonly neededN?: number;
  readonly reaches?: boolean;
  readonly note: Remark;
  readonly source: string;
}

/** What the tables of the codes count by. */
interface Lengths {
  readonly boltMm: number;
  readonly boltLengthMm?: number | undefined;
  readonly gripMm?: number | undefined;
  readonly sloped: SlopedFaces;
}

interface Bolt extends Lengths {
  readonly stressAreaMm2: number;
  readonly tensileMPa?: number | undefined;
  readonly className?: string | undefined;
}

/** The turn of each code; undefined where the length it counts by was not given, or its table ends. */
export function turnOf(code: Code, { boltMm, boltLengthMm, gripMm, sloped }: Lengths): CodeTurn | undefined {
  switch (code) {
    case 'RCSC':
      return boltLengthMm === undefined ? undefined : rcscTurn(boltLengthMm, boltMm, sloped);
    case 'EN 1090-2':
      return gripMm === undefined ? undefined : en1090Turn(gripMm, boltMm);
  }
}

/** The length that a code counts by. */
export const LENGTH_FIELDS = { RCSC: 'boltLengthMm', 'EN 1090-2': 'gripMm' } as const satisfies Record<Code, string>;

/**
 * Each code's turn and what it is reckoned to reach, for codes whose length is known.
 *
 * @param preloadAfterN preload after a turn from snug
 */
export function codeChecks(bolt: Bolt, preloadAfterN: (angleDeg: number) => number): readonly CodeCheck[] {
  return CODES.filter((code) => bolt[LENGTH_FIELDS[code]] !== undefined).map((code) => {
    const turn = turnOf(code, bolt);
    const neededN = neededPreloadN(code, bolt);
    const preloadN = turn === undefined ? undefined : preloadAfterN(turn.angleDeg);
    return {
      standard: code,
      ...turn,
      ...(preloadN === undefined ? {} : { preloadN }),
      ...(neededN === undefined ? {} : { neededN }),
      ...(preloadN === undefined || neededN === undefined ? {} : { reaches: preloadN >= neededN }),
      ...TOLD[code],
    };
  });
}

function neededPreloadN(code: Code, { className, tensileMPa, stressAreaMm2 }: Bolt): number | undefined {
  if (code === 'EN 1090-2') return className === undefined ? undefined : en1090PreloadN(className, stressAreaMm2);
  return tensileMPa === undefined ? undefined : rcscPretensionN(tensileMPa, stressAreaMm2);
}

const TOLD = {
  RCSC: {
    note: remark('note-turn-rcsc'),
    source: 'RCSC Specification for Structural Joints Using High-Strength Bolts, tables 8.1 and 8.2 (secondary table)',
  },
  'EN 1090-2': {
    note: remark('note-turn-en-1090'),
    source: 'EN 1090-2, combined method, table of the additional rotation (secondary table)',
  },
} as const satisfies Record<Code, object>;
