import { ok, type Result } from '@clampwright/core/failure';
import type { IncomingPull } from '@clampwright/core/record';
import type { Columns } from './columns.ts';
import type { FileContext } from './context.ts';
import { angleReader, type Figure, type FigureReader, torqueReader } from './figures.ts';
import { identityOf } from './identity.ts';
import { incomingPull } from './incoming.ts';
import type { Mapping } from './mapping.ts';
import { refused, refusedFor } from './outcome.ts';
import { cellOf, placeOf } from './place.ts';
import type { RowReader } from './row-reader.ts';
import { tighteningDeg, tighteningNm } from './signs.ts';
import { type TimeReader, timeReader } from './time.ts';

interface Readers {
  readonly torque: FigureReader;
  readonly angle: FigureReader | undefined;
  readonly time: TimeReader | undefined;
}

/** A reader that takes each row as one pull. */
export function pullReader(mapping: Mapping, columns: Columns, context: FileContext): RowReader {
  const readers: Readers = {
    torque: torqueReader(mapping, columns),
    angle: mapping.angle === undefined ? undefined : angleReader(mapping, columns),
    time: mapping.time && timeReader(mapping.time, mapping.decimalSign),
  };
  return {
    row: (line, cells) => {
      const pull = readRow(mapping, columns, context, readers, line, cells);
      return [pull.ok ? { kind: 'pull', line, pull: pull.value } : refusedFor(line, pull.failure)];
    },
    broken: (line, field, message) => [refused(line, field, message)],
    end: () => [],
  };
}

function readRow(
  mapping: Mapping,
  columns: Columns,
  context: FileContext,
  readers: Readers,
  line: number,
  cells: readonly string[],
): Result<IncomingPull> {
  const place = placeOf(columns, cells, context);
  if (!place.ok) return place;
  const torque = readers.torque(cells);
  if (!torque.ok) return torque;
  const torqueNm = tighteningNm(mapping, torque.value);
  if (!torqueNm.ok) return torqueNm;
  const angle: Result<Figure | undefined> = readers.angle ? readers.angle(cells) : ok(undefined);
  if (!angle.ok) return angle;
  const angleDeg: Result<number | undefined> = angle.value ? tighteningDeg(mapping, angle.value) : ok(undefined);
  if (!angleDeg.ok) return angleDeg;
  const timeText = cellOf(columns, cells, 'time');
  const time: Result<number | undefined> = readers.time ? readers.time(timeText ?? '') : ok(undefined);
  if (!time.ok) return time;
  const id = identityOf(context, {
    place: place.value,
    time: timeText,
    torque: torque.value.text,
    angle: angle.value?.text,
    line,
  });
  return ok(
    incomingPull(context, {
      id,
      line,
      place: place.value,
      timeMs: time.value,
      torque: torque.value,
      torqueNm: torqueNm.value,
      angle: angle.value,
      angleDeg: angleDeg.value,
    }),
  );
}
