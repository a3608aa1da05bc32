import { failed, ok, type Result } from '@clampwright/core/failure';
import { type NewOwnRow, newOwnRowSchema, type OwnRow, ownRowSchema, standingRows } from '@clampwright/core/fastener';
import { canonical } from '@clampwright/core/record';
import { z } from 'zod';
import { anybody, onlyFor } from './access.ts';
import { json } from './gives.ts';
import { route } from './route.ts';

export const listOwnRows = route({
  method: 'get',
  path: '/own-rows',
  title: 'list the workshop’s own materials and lubricants, superseded ones too',
  access: anybody,
  takes: z.object({}),
  gives: json(z.array(ownRowSchema)),
  handle: (_, { store }) => store.ownRows.list(),
});

export const addOwnRow = route({
  method: 'post',
  path: '/own-rows',
  title: 'add an own material or lubricant',
  access: onlyFor('lead'),
  takes: z.object({ body: newOwnRowSchema }),
  gives: json(ownRowSchema, 201),
  handle: async ({ body }, { store, now }, { id, name, demo }) => {
    const rows = await store.ownRows.list();
    if (!rows.ok) return rows;
    const already = rows.value.find((row) => row.id === body.id);
    if (already && isAsWritten(already, body)) return ok(already);
    const fits = supersedable(rows.value, body);
    if (!fits.ok) return fits;
    return store.ownRows.add({ ...body, by: { id, name }, addedAt: now().toISOString() }, { demo });
  },
});

/** Sent twice, it is the same row, whoever sent it and when. */
const isAsWritten = ({ by: _by, addedAt: _at, ...row }: OwnRow, body: NewOwnRow): boolean =>
  canonical(row) === canonical(body);

/** A row takes the place of one that stands and is of its kind, so that there is never a choice of two newest ones. */
function supersedable(rows: readonly OwnRow[], { kind, supersedes }: NewOwnRow): Result<undefined> {
  if (supersedes === undefined) return ok(undefined);
  const before = rows.find(({ id }) => id === supersedes);
  if (before?.kind !== kind) return failed({ kind: 'not-found', what: `own ${kind}`, id: supersedes });
  if (standingRows(rows).includes(before)) return ok(undefined);
  return failed({
    kind: 'conflict',
    message: `“${before.name}” was superseded before; supersede the row that took its place.`,
    current: rows.find((row) => row.supersedes === supersedes),
  });
}
