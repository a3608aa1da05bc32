import { type Language, readNumber } from '@clampwright/core/quantity';
import type { CalibrationPlan } from '@clampwright/core/wrench';
import { type Act, nextOf, type Reading } from './session.ts';

export type Pasted =
  | { readonly ok: true; readonly readings: readonly Reading[] }
  | { readonly ok: false; readonly line: number; readonly text: string; readonly fault: 'unreadable' | 'too-many' };

/**
 * Readings from a text, one a line: what the reference showed, or wrench and reference. They go to the points in the
 * order of the plan. All of them are taken or none.
 */
export function readPasted(text: string, plan: CalibrationPlan, acts: readonly Act[], language: Language): Pasted {
  const readings: Reading[] = [];
  for (const [index, line] of text.split(/\r\n|\r|\n/).entries()) {
    if (line.trim() === '') continue;
    const figures = figuresIn(line, language);
    // a line of names at the head of a table is no reading
    if (!figures && index === 0 && !/\d/.test(line)) continue;
    const [first, second] = figures ?? [];
    if (first === undefined) return { ok: false, line: index + 1, text: line.trim(), fault: 'unreadable' };
    const next = nextOf(plan, [...acts, ...readings]);
    if (next?.step.kind !== 'point') return { ok: false, line: index + 1, text: line.trim(), fault: 'too-many' };
    const { direction, torqueNm: targetNm } = next.step;
    readings.push(
      second === undefined
        ? { kind: 'reading', direction, targetNm, referenceNm: first }
        : { kind: 'reading', direction, targetNm, indicatedNm: first, referenceNm: second },
    );
  }
  return { ok: true, readings };
}

/** One or two figures; undefined where the line is anything else. */
function figuresIn(line: string, language: Language): readonly number[] | undefined {
  const parts = line
    .trim()
    .split(/\t|;|\s+/)
    .filter((part) => part !== '');
  const figures = parts.map((part) => readNumber(part, language));
  const values = figures.flatMap((figure) => (figure.ok ? [figure.value] : []));
  return values.length === parts.length && (values.length === 1 || values.length === 2) ? values : undefined;
}
