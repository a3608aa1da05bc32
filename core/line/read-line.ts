import { convert } from '../quantity/convert.ts';
import { HAND_TORQUE } from '../quantity/torque.ts';
import { checkOf } from './check.ts';
import type { LineDescription, LineKind } from './description.ts';
import { type Saying, takeFor } from './take-cell.ts';
import type { ToldFigure } from './told-pull.ts';

/** What is the matter with a line; `cell` counts from 1. */
export interface LineFault {
  readonly code:
    | 'too-long'
    | 'unprintable'
    | 'no-such-line'
    | 'check'
    | 'figure'
    | 'unit'
    | 'time'
    | 'count'
    | 'identity'
    | 'serial'
    | 'absurd'
    | 'no-result'
    | 'cut-off';
  readonly cell?: number;
}

/** What a line says, whatever its kind. */
export interface LineSaid {
  readonly says: LineKind['says'];
  readonly torque?: ToldFigure;
  readonly angle?: ToldFigure;
  readonly fastestDegPerS?: number;
  readonly elapsedS?: number;
  readonly takenAt?: string;
  readonly number?: number;
  readonly sampleCount?: number;
  readonly position?: number;
  readonly serial?: string;
  readonly identity?: string;
}

export type LineRead =
  | { readonly ok: true; readonly said: LineSaid }
  | { readonly ok: false; readonly fault: LineFault };

/** Reads one whole line without its end. */
export type ReadLine = (text: string) => LineRead;

/** Makes a reader of lines from their description; what can be worked out beforehand is. */
export function compileLines(description: LineDescription): ReadLine {
  const isTabbed = description.delimiter === '\t';
  const kinds = description.lines.map((kind) => compileKind(kind, description));
  return (text) => {
    if (UNPRINTABLE.test(isTabbed ? text.replaceAll('\t', ' ') : text))
      return { ok: false, fault: { code: 'unprintable' } };
    const cells = text.split(description.delimiter);
    let nearest: LineRead = { ok: false, fault: { code: 'no-such-line' } };
    for (const kind of kinds) {
      const read = kind(text, cells);
      if (read?.ok) return read;
      nearest = read ?? nearest;
    }
    return nearest;
  };
}

/** A byte that is no text comes from a bad cable, and with it the rest is in doubt. */
const UNPRINTABLE = /[^\x20-\x7e]/;

/** Undefined: the line is of another kind. */
type ReadKind = (text: string, cells: readonly string[]) => LineRead | undefined;

function compileKind({ says, fields }: LineKind, description: LineDescription): ReadKind {
  const marks = fields.flatMap((field, at) => (field.means === 'mark' ? [[at, field.text] as const] : []));
  const takes = fields.map((field) => takeFor(field, description));
  const last = fields.at(-1);
  const method = last?.means === 'check' ? last.method : undefined;
  return (text, cells) => {
    if (cells.length !== fields.length) return undefined;
    for (const [at, mark] of marks) if (cells[at]!.trim() !== mark) return undefined;
    if (method !== undefined) {
      const cut = text.lastIndexOf(description.delimiter);
      if (cells.at(-1)!.trim().toUpperCase() !== checkOf(text.slice(0, cut), method))
        return faulty('check', fields.length - 1);
    }
    if (says === 'other') return { ok: true, said: { says } };
    const into: Saying = { said: { says } };
    for (let at = 0; at < cells.length; at++) {
      const fault = takes[at]!(cells[at]!.trim(), into);
      if (fault !== undefined) return faulty(fault, at);
    }
    const absurd = takeTorque(into, description);
    return absurd ?? { ok: true, said: into.said };
  };
}

const faulty = (code: LineFault['code'], at: number): LineRead => ({ ok: false, fault: { code, cell: at + 1 } });

/** Once the unit is known, wherever in the line it stood. */
function takeTorque(into: Saying, { torqueUnit, lines }: LineDescription): LineRead | undefined {
  const text = into.torqueText;
  if (text === undefined) return undefined;
  const unit = into.unit ?? torqueUnit;
  const value = convert(Number(text.replace(',', '.')), unit, 'N·m');
  const at =
    lines.find(({ says }) => says === into.said.says)?.fields.findIndex(({ means }) => means === 'torque') ?? 0;
  if (!value.ok || Math.abs(value.value) > HAND_TORQUE.highestNm) return faulty('absurd', at);
  into.said.torque = { text, unit, value: value.value };
  return undefined;
}
