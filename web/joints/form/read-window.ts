import { type AngleWindow, readWindow, type TorqueWindow, type TypedWindow } from '@clampwright/core/procedure';
import { convert, isTorqueUnit, readUnit } from '@clampwright/core/quantity';
import type { FormFinding } from '../../forms/fault.ts';
import type { Reader } from '../../forms/reader.ts';
import type { WindowForm } from './joint-form.ts';

/** The fields of a window that are on screen, by their names in the typed window. */
export const WINDOW_FIELDS = {
  percent: ['target', 'percent'],
  'plus-minus': ['target', 'plusMinus'],
  limits: ['lower', 'upper'],
} as const satisfies Record<WindowForm['form'], readonly (keyof WindowForm)[]>;

/** The window as it was typed, without the texts of the forms not chosen. */
export function typedWindow(form: WindowForm): TypedWindow {
  const text = (typed: string) => typed.trim();
  switch (form.form) {
    case 'percent':
      return { form: 'percent', target: text(form.target), percent: text(form.percent), unit: form.unit };
    case 'plus-minus':
      return { form: 'plus-minus', target: text(form.target), plusMinus: text(form.plusMinus), unit: form.unit };
    case 'limits':
      return { form: 'limits', lower: text(form.lower), upper: text(form.upper), unit: form.unit };
  }
}

/** A torque window, N·m; each figure is looked at for itself first, so that a fault stands beside its field. */
export function readTorqueWindow(form: WindowForm, place: string, reader: Reader): TorqueWindow | undefined {
  if (!areFiguresRight(form, place, reader)) return undefined;
  return reader.take(place, readWindow(typedWindow(form), 'torque', reader.language));
}

/** An angle window, degrees. */
export function readAngleWindow(form: WindowForm, place: string, reader: Reader): AngleWindow | undefined {
  if (!areFiguresRight(form, place, reader)) return undefined;
  return reader.take(place, readWindow(typedWindow(form), 'angle', reader.language));
}

function areFiguresRight(form: WindowForm, place: string, reader: Reader): boolean {
  const figures = WINDOW_FIELDS[form.form].map((field) => readFigure(form, field, `${place}.${field}`, reader));
  if (figures.some((figure) => figure === undefined)) return false;
  const [first = 0, second = 0] = figures;
  if (form.form === 'limits' && first > second) return isWrong(`${place}.upper`, { kind: 'lower-above-upper' });
  if (form.form === 'plus-minus' && second > first) return isWrong(`${place}.plusMinus`, { kind: 'below-zero' });
  return true;

  function isWrong(field: string, finding: FormFinding): false {
    reader.fault(field, finding);
    return false;
  }
}

const ALL_DEG = { from: 0, to: 3600 } as const;

/** A figure in N·m or degrees; a percentage as it is. */
function readFigure(form: WindowForm, field: keyof WindowForm, at: string, reader: Reader): number | undefined {
  const text = form[field];
  if (field === 'percent') return reader.number(at, text, { from: 0, to: 100 });
  const unit = readUnit(form.unit);
  if (!unit.ok) return reader.fault(at, unit.failure);
  if (isTorqueUnit(unit.value) && field !== 'plusMinus') return reader.torqueNm(at, text, unit.value);
  const value = reader.number(at, text, field === 'target' ? { isPositive: true } : { from: 0 });
  const converted =
    value === undefined ? undefined : convert(value, unit.value, isTorqueUnit(unit.value) ? 'N·m' : 'deg');
  if (!converted?.ok) return undefined;
  if (isTorqueUnit(unit.value) || converted.value <= ALL_DEG.to) return converted.value;
  return reader.fault(at, { kind: 'between', ...ALL_DEG });
}
