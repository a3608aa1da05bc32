import { countPlaces, type Layout, type Order, positionsInOrder } from '@clampwright/core/layout';
import type { Round, Stage } from '@clampwright/core/procedure';
import type { Reader } from '../../forms/reader.ts';
import { whole } from '../../forms/whole.ts';
import { STAGE_QUANTITIES } from './blank.ts';
import type { RoundForm, StageForm } from './joint-form.ts';
import { readAngleWindow, readTorqueWindow } from './read-window.ts';

/** One stage as the form has it; undefined while something is missing or wrong. */
export function readStage(
  form: StageForm,
  index: number,
  layout: Layout | undefined,
  reader: Reader,
): Stage | undefined {
  const place = `stages[${index}]`;
  const needs = STAGE_QUANTITIES[form.kind];
  const hasTorque = needs.torque !== 'never' && form.torqueUsed;
  const hasAngle = needs.angle !== 'never' && form.angleUsed;
  const hasFrom = hasAngle && form.angleFrom.trim() !== '';
  const hasSpeed = hasAngle && form.speedLimit.trim() !== '';
  return whole({
    kind: form.kind,
    ...(hasTorque ? { torque: readTorqueWindow(form.torque, `${place}.torque`, reader) } : {}),
    ...(hasAngle ? { angle: readAngleWindow(form.angle, `${place}.angle`, reader) } : {}),
    ...(hasFrom ? { angleFromNm: reader.torqueNm(`${place}.angleFromNm`, form.angleFrom, form.angleFromUnit) } : {}),
    ...(hasSpeed
      ? { speedLimitDegPerS: reader.number(`${place}.speedLimitDegPerS`, form.speedLimit, { isPositive: true }) }
      : {}),
    rounds: readRounds(form.rounds, `${place}.rounds`, layout, reader),
  });
}

function readRounds(
  forms: readonly RoundForm[],
  place: string,
  layout: Layout | undefined,
  reader: Reader,
): Round[] | undefined {
  const rounds = forms.map((form, index) => readRound(form, `${place}[${index}]`, layout, reader));
  const known = rounds.filter((round) => round !== undefined);
  return known.length === rounds.length && known.length > 0 ? known : undefined;
}

function readRound(form: RoundForm, place: string, layout: Layout | undefined, reader: Reader): Round | undefined {
  const percent = reader.number(`${place}.share`, form.sharePercent, { isPositive: true, to: 100 });
  const order = readOrder(form, `${place}.order`, layout, reader);
  return whole({
    share: percent === undefined ? undefined : percent / 100,
    order,
    ...(form.positionShares ? { positionShares: [...form.positionShares] } : {}),
    ...(form.isClosing ? { closing: readClosing(form, place, reader) } : {}),
  });
}

function readClosing({ stillDeg }: RoundForm, place: string, reader: Reader) {
  return whole({ stillDeg: reader.number(`${place}.closing.stillDeg`, stillDeg, { isPositive: true, to: 90 }) });
}

function readOrder(form: RoundForm, field: string, layout: Layout | undefined, reader: Reader): Order | undefined {
  if (form.method === 'own' && form.positions.length === 0) return reader.fault(field, { kind: 'needed' });
  const order = orderOf(form);
  if (layout && !positionsInOrder(layout, order).ok) {
    reader.fault(field, { kind: 'each-once', count: countPlaces(layout) });
  }
  return order;
}

/** The order that a round names. */
export const orderOf = (form: RoundForm): Order =>
  form.method === 'own' ? { method: 'own', positions: [...form.positions] } : { method: form.method };
