import { ok, type Result } from '@clampwright/core/failure';
import type { Columns } from './columns.ts';
import type { FileContext } from './context.ts';
import { addSample, closeCurve, type OpenCurve, openCurve, type Sample } from './curve.ts';
import { angleReader, torqueReader } from './figures.ts';
import type { Mapping } from './mapping.ts';
import { type Outcome, refused, refusedFor } from './outcome.ts';
import { cellOf, placeOf } from './place.ts';
import type { RowReader } from './row-reader.ts';
import { timeReader } from './time.ts';

/**
 * A reader that takes rows following each other with the same value of one column as one pull.
 * A bad row spoils its curve: it is refused by that row's line, and the curve's other rows are passed over.
 */
export function curveReader(mapping: Mapping, columns: Columns, context: FileContext): RowReader {
  const sampleOf = sampleReader(mapping, columns);
  let key: string | undefined;
  let open: OpenCurve | undefined;

  const close = (): Outcome[] => {
    const closed = open && closeCurve(open, mapping, context);
    open = undefined;
    return closed ? [closed] : [];
  };

  const begin = (line: number, newKey: string, cells: readonly string[], sample: Sample): Result<OpenCurve> => {
    const place = placeOf(columns, cells, context);
    return place.ok ? ok(openCurve(line, newKey, place.value, sample)) : place;
  };

  return {
    row: (line, cells) => {
      const rowKey = cellOf(columns, cells, 'curveBy') ?? '';
      const isNew = rowKey !== key;
      const outcomes = isNew ? close() : [];
      if (!isNew && !open) return outcomes;
      key = rowKey;
      const sample = sampleOf(cells);
      if (!sample.ok) {
        open = undefined;
        return [...outcomes, refusedFor(line, sample.failure)];
      }
      const curve = open ? ok(open) : begin(line, rowKey, cells, sample.value);
      const added = curve.ok ? addSample(curve.value, mapping, sample.value) : curve;
      open = curve.ok && added.ok ? curve.value : undefined;
      return added.ok ? outcomes : [...outcomes, refusedFor(line, added.failure)];
    },
    broken: (line, field, message) => {
      open = undefined;
      return [refused(line, field, message)];
    },
    end: close,
  };
}

function sampleReader(mapping: Mapping, columns: Columns): (cells: readonly string[]) => Result<Sample> {
  const { time } = mapping;
  if (!time) throw new Error('a mapping of curves has a time: its schema sees to it');
  const torqueOf = torqueReader(mapping, columns);
  const angleOf = angleReader(mapping, columns);
  const timeOf = timeReader(time, mapping.decimalSign);
  return (cells) => {
    const timeText = cellOf(columns, cells, 'time') ?? '';
    const timeMs = timeOf(timeText);
    if (!timeMs.ok) return timeMs;
    const torque = torqueOf(cells);
    if (!torque.ok) return torque;
    const angle = angleOf(cells);
    if (!angle.ok) return angle;
    return ok({ timeMs: timeMs.value, timeText, torque: torque.value, angle: angle.value });
  };
}
