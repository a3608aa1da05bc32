import { countInRectangle, type Layout } from '@clampwright/core/layout';
import { convert } from '@clampwright/core/quantity';
import { wholesIn } from '../../forms/read-rows.ts';
import type { Reader } from '../../forms/reader.ts';
import { whole } from '../../forms/whole.ts';
import type { LayoutForm } from './joint-form.ts';

const MOST = 200;
const COUNT = { isWhole: true, from: 1, to: MOST } as const;

/** The layout that stands in the form, in mm; undefined while a figure is missing or wrong. */
export function readLayout(form: LayoutForm, reader: Reader): Layout | undefined {
  const count = (field: string, text: string) => reader.number(`layout.${field}`, text, COUNT);
  const lengthMm = (field: string, text: string, isPositive = true) => {
    const value = reader.number(`layout.${field}`, text, { isPositive });
    return value === undefined ? undefined : reader.take(`layout.${field}`, convert(value, form.unit, 'mm'));
  };
  switch (form.kind) {
    case 'circle':
      return whole({
        kind: 'circle',
        count: count('count', form.count),
        diameterMm: lengthMm('diameterMm', form.diameter),
        firstAngleDeg: reader.number('layout.firstAngleDeg', form.firstAngle, { from: -360, to: 360 }),
        direction: form.direction,
      });
    case 'rectangle':
      return readRectangle(
        form,
        {
          rows: count('rows', form.rows),
          columns: count('columns', form.columns),
          pitchXMm: lengthMm('pitchXMm', form.pitchX),
          pitchYMm: lengthMm('pitchYMm', form.pitchY),
        },
        reader,
      );
    case 'line':
      return whole({ kind: 'line', count: count('count', form.count), pitchMm: lengthMm('pitchMm', form.pitch) });
    case 'points':
      return readPoints(form, lengthMm, reader);
  }
}

interface Grid {
  readonly rows: number;
  readonly columns: number;
  readonly pitchXMm: number;
  readonly pitchYMm: number;
}

function readRectangle(
  { edgeOnly, staggered, missing: typed }: LayoutForm,
  figures: { readonly [Name in keyof Grid]: Grid[Name] | undefined },
  reader: Reader,
): Layout | undefined {
  const isMissing = typed.trim() !== '';
  const missing = isMissing ? wholesIn(typed, 'layout.missing', reader) : [];
  const grid = whole(figures);
  if (!grid || !missing) return undefined;
  const places = countInRectangle(grid.rows, grid.columns, edgeOnly);
  const isThere = missing.every((place) => place >= 1 && place <= places) && new Set(missing).size < places;
  if (!isThere) return reader.fault('layout.missing', { kind: 'between', from: 1, to: places });
  return {
    kind: 'rectangle',
    ...grid,
    edgeOnly,
    ...(staggered && !edgeOnly ? { staggered: true } : {}),
    ...(isMissing ? { missing } : {}),
  };
}

function readPoints(
  form: LayoutForm,
  lengthMm: (field: string, text: string, isPositive: boolean) => number | undefined,
  reader: Reader,
): Layout | undefined {
  if (form.points.length === 0 || form.points.length > MOST) {
    return reader.fault('layout.points', { kind: 'whole', from: 1, to: MOST });
  }
  const points = form.points.map((point, index) =>
    whole({
      xMm: lengthMm(`points[${index}].xMm`, point.x, false),
      yMm: lengthMm(`points[${index}].yMm`, point.y, false),
    }),
  );
  const known = points.filter((point) => point !== undefined);
  return known.length === points.length ? { kind: 'points', points: known } : undefined;
}
