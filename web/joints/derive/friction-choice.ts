import {
  FRICTION_CLASSES,
  type FrictionRange,
  LUBRICATIONS,
  type OwnLubricant,
  type OwnRow,
  standingRows,
} from '@clampwright/core/fastener';

/** A lubrication of the shipped table. */
export type Lubrication = (typeof LUBRICATIONS)[number];

/** Where the friction is taken from. */
export type FrictionChoice =
  | { readonly kind: 'table'; readonly value: string; readonly row: Lubrication; readonly range: Range }
  | { readonly kind: 'own'; readonly value: string; readonly row: OwnLubricant }
  | { readonly kind: 'typed'; readonly value: 'typed' };

interface Range {
  readonly lowest: number;
  /** Class E has no upper end. */
  readonly highest: number | undefined;
}

/** Everything that can be chosen: the workshop's own first, then the table, then figures of one's own. */
export const frictionChoices = (ownRows: readonly OwnRow[]): readonly FrictionChoice[] => [
  ...standingRows(ownRows).flatMap((row) =>
    row.kind === 'lubricant' ? [{ kind: 'own', value: row.id, row } as const] : [],
  ),
  ...LUBRICATIONS.map((row, index) => ({ kind: 'table', value: `table-${index}`, row, range: rangeOf(row) }) as const),
  { kind: 'typed', value: 'typed' },
];

/** From the lowest of the first class to the highest of the last. */
function rangeOf({ classes }: Lubrication): Range {
  const rows = FRICTION_CLASSES.filter(({ name }) => classes.includes(name));
  return { lowest: Math.min(...rows.map(({ lowest }) => lowest)), highest: rows.at(-1)?.highest };
}

/** Credible friction of thread and bearing face; undefined where it is typed. */
export function rangesOf(
  choice: FrictionChoice,
): { readonly thread: FrictionRange; readonly bearing: FrictionRange } | undefined {
  switch (choice.kind) {
    case 'own':
      return { thread: choice.row.threadFriction, bearing: choice.row.bearingFriction };
    case 'table': {
      const range = { lower: choice.range.lowest, upper: choice.range.highest ?? 1 };
      return { thread: range, bearing: range };
    }
    case 'typed':
      return undefined;
  }
}
