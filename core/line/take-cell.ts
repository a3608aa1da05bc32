import { convert } from '../quantity/convert.ts';
import { readUnit } from '../quantity/read-unit.ts';
import { isTorqueUnit, type TorqueUnit } from '../quantity/unit.ts';
import type { LineDescription, LineField } from './description.ts';
import type { LineFault, LineSaid } from './read-line.ts';

/** What a line has said so far; the torque waits for its unit, which may stand behind it. */
export interface Saying {
  torqueText?: string;
  unit?: TorqueUnit;
  said: { -readonly [Key in keyof LineSaid]: LineSaid[Key] };
}

/** Takes a cell, blanks around it cut off; what is the matter with it otherwise. */
export type TakeCell = (cell: string, into: Saying) => LineFault['code'] | undefined;

const FIGURE = { point: /^[+-]?\d{1,7}(\.\d{1,9})?$/, comma: /^[+-]?\d{1,7}(,\d{1,9})?$/ } as const;
const COUNT = /^\d{1,9}$/;
const INSTANT = /^\d{4}-\d\d-\d\d[T ]\d\d:\d\d:\d\d(\.\d{1,6})?(Z|[+-]\d\d:\d\d)$/;
const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[1-8][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;
const NAME = /^[\x21-\x7e]{1,100}$/;
const EARLIEST_MS = Date.UTC(2000, 0, 1);
const LATEST_MS = Date.UTC(2100, 0, 1);
const isAbsent = (cell: string): boolean => cell === '' || cell === '-';

/** What is to be done with a field of this meaning. */
export function takeFor(field: LineField, { decimalSign, angleUnit }: LineDescription): TakeCell {
  const isFigure = (cell: string): boolean => FIGURE[decimalSign].test(cell);
  const figure = (cell: string): number => Number(cell.replace(',', '.'));
  switch (field.means) {
    case 'mark':
    case 'check':
    case 'passed-over':
      return () => undefined;
    case 'torque':
      return (cell, into) => {
        if (!isFigure(cell)) return 'figure';
        into.torqueText = cell;
        return undefined;
      };
    case 'torque-unit':
      return (cell, into) => {
        const unit = readUnit(cell);
        if (!unit.ok || !isTorqueUnit(unit.value)) return 'unit';
        into.unit = unit.value;
        return undefined;
      };
    case 'angle': {
      const one = convert(1, angleUnit, 'deg');
      const factor = one.ok ? one.value : 1;
      return (cell, into) => {
        if (isAbsent(cell)) return undefined;
        if (!isFigure(cell)) return 'figure';
        into.said.angle = { text: cell, unit: angleUnit, value: figure(cell) * factor };
        return undefined;
      };
    }
    case 'fastest':
      return (cell, into) => {
        if (isAbsent(cell)) return undefined;
        if (!isFigure(cell) || figure(cell) < 0) return 'figure';
        into.said.fastestDegPerS = figure(cell);
        return undefined;
      };
    case 'elapsed': {
      const perSecond = field.unit === 'ms' ? 1000 : 1;
      return (cell, into) => {
        if (!isFigure(cell)) return 'figure';
        into.said.elapsedS = figure(cell) / perSecond;
        return undefined;
      };
    }
    case 'time':
      return (cell, into) => {
        const ms = field.written === 'iso-8601' ? isoMs(cell) : unixSeconds(cell, decimalSign) * 1000;
        if (!(ms >= EARLIEST_MS && ms < LATEST_MS)) return 'time';
        into.said.takenAt = new Date(Math.round(ms)).toISOString();
        return undefined;
      };
    case 'number':
      return countTaker('number');
    case 'sample-count':
      return countTaker('sampleCount');
    case 'position':
      return countTaker('position');
    case 'serial':
      return (cell, into) => {
        if (!NAME.test(cell)) return 'serial';
        into.said.serial = cell;
        return undefined;
      };
    case 'identity':
      return (cell, into) => {
        if (!UUID.test(cell)) return 'identity';
        into.said.identity = cell;
        return undefined;
      };
  }
}

const isoMs = (cell: string): number => (INSTANT.test(cell) ? Date.parse(cell.replace(' ', 'T')) : Number.NaN);

/** Seconds since 1970 have ten digits, more than any other figure. */
const unixSeconds = (cell: string, sign: LineDescription['decimalSign']): number =>
  (sign === 'comma' ? /^\d{9,11}(,\d{1,6})?$/ : /^\d{9,11}(\.\d{1,6})?$/).test(cell)
    ? Number(cell.replace(',', '.'))
    : Number.NaN;

const countTaker =
  (member: 'number' | 'sampleCount' | 'position'): TakeCell =>
  (cell, into) => {
    if (!COUNT.test(cell) || (member === 'position' && Number(cell) === 0)) return 'count';
    into.said[member] = Number(cell);
    return undefined;
  };
