import { invalid, ok, type Result } from '@clampwright/core/failure';
import type { Columns } from './columns.ts';
import type { FileContext } from './context.ts';
import type { ColumnField } from './mapping.ts';

/** Where a pull belongs, as far as its row says. */
export interface Place {
  readonly jointRef: string;
  readonly position: number | undefined;
  readonly stage: number | undefined;
  readonly round: number | undefined;
  readonly wrenchId: string | undefined;
}

/** Text of a cell without blanks around; undefined without such a column, empty when the cell is. */
export function cellOf({ index }: Columns, cells: readonly string[], field: ColumnField): string | undefined {
  const at = index[field];
  return at === undefined ? undefined : cells[at]?.trim();
}

/** Reads joint, position, stage, round and wrench of a row; what has no column stays undefined. */
export function placeOf(columns: Columns, cells: readonly string[], context: FileContext): Result<Place> {
  const jointRef = jointOf(cellOf(columns, cells, 'joint'), context);
  if (!jointRef.ok) return jointRef;
  const wrenchId = wrenchOf(cellOf(columns, cells, 'wrenchSerial'), context);
  if (!wrenchId.ok) return wrenchId;
  const position = countOf('position', cellOf(columns, cells, 'position'));
  if (!position.ok) return position;
  const stage = countOf('stage', cellOf(columns, cells, 'stage'));
  if (!stage.ok) return stage;
  const round = countOf('round', cellOf(columns, cells, 'round'));
  if (!round.ok) return round;
  return ok({
    jointRef: jointRef.value,
    position: position.value,
    stage: stage.value,
    round: round.value,
    wrenchId: wrenchId.value,
  });
}

function jointOf(text: string | undefined, { jointRef, joints }: FileContext): Result<string> {
  if (text) {
    const known = joints ? joints.get(text) : text;
    return known === undefined
      ? invalid('joint', `“${text}” is no joint of this job.`, 'a joint of the job')
      : ok(known);
  }
  return jointRef === undefined ? invalid('joint', 'The row names no joint.', 'a joint of the job') : ok(jointRef);
}

function wrenchOf(text: string | undefined, { wrenches }: FileContext): Result<string | undefined> {
  if (!text) return ok(undefined);
  const id = wrenches?.get(text);
  return id === undefined
    ? invalid('wrenchSerial', `No wrench with the serial number “${text}” is known.`, 'a known wrench')
    : ok(id);
}

function countOf(field: ColumnField, text: string | undefined): Result<number | undefined> {
  if (text === undefined) return ok(undefined);
  if (/^0*[1-9]\d{0,3}$/.test(text)) return ok(Number(text));
  return invalid(field, text === '' ? `There is no ${field}.` : `“${text}” is no ${field}.`, 'a whole number from 1');
}
