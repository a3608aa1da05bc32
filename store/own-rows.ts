import { joinsRows, type OwnRow, ownRowSchema } from '@clampwright/core/fastener';
import { canonical } from '@clampwright/core/record';
import type { Kind } from './register.ts';

/** Rows of the workshop's own; what a row supersedes is looked up in the transaction that adds it. */
export const OWN_ROWS: Kind<OwnRow> = {
  table: 'own_rows',
  what: 'own row',
  schema: ownRowSchema,
  isSame: (kept, sent) => canonical(asWritten(kept)) === canonical(asWritten(sent)),
  joins: joinsRows,
};

/** Sent twice, it is the same row, whoever sent it and when. */
function asWritten({ by: _by, addedAt: _at, ...row }: OwnRow) {
  return row;
}
