import { hash } from 'node:crypto';
import { invalid, ok, parse, type Result as Read } from '@clampwright/core/failure';
import type { ToldFigure, ToldPull } from '@clampwright/core/line';
import { convert } from '@clampwright/core/quantity';
import { uuidV8 } from '@clampwright/core/record';
import { readingOf } from '@clampwright/core/trace';
import {
  FINAL_TAG,
  type JoiningResult,
  joiningResultSchema,
  type MetaData,
  QUANTITY,
  type Result,
  type ResultValue,
  resultSchema,
  SINGLE_RESULT,
  UNDEFINED_RESULT,
} from './result-shape.ts';
import { traceOf } from './result-trace.ts';
import { unitMeant } from './units.ts';

/** What a result comes to. `passed-over`: it is no pull of its own, such as the sum of a batch or a part of a result. */
export type ResultRead =
  | { readonly kind: 'pull'; readonly resultId: string; readonly pull: ToldPull }
  | { readonly kind: 'passed-over'; readonly resultId: string };

/**
 * Reads a result of a joining operation. The system's own evaluation is never read: what a pull means is judged here.
 *
 * @param origin names the system, so that the same number in two of them is two results
 * @returns refused where it has no torque, more than one that could be meant, or a unit that is not known
 * @source OPC 40450-1, clause 10
 */
export function readResult(value: unknown, origin: string): Read<ResultRead> {
  const result = parse(resultSchema, value);
  if (!result.ok) return result;
  const meta = result.value.resultMetaData;
  const { resultId } = meta;
  if (meta.isSimulated) return invalid('isSimulated', 'the joining system made this result up', 'a measured result');
  const isSingle = [SINGLE_RESULT, UNDEFINED_RESULT].includes(meta.classification ?? SINGLE_RESULT);
  const joining = contentOf(result.value);
  if (!isSingle || meta.isPartial || !joining) return ok({ kind: 'passed-over', resultId });
  const pull = pullOf(meta, joining, origin);
  return pull.ok ? ok({ kind: 'pull', resultId, pull: pull.value }) : pull;
}

function contentOf({ resultContent }: Result): JoiningResult | undefined {
  for (const { value } of (resultContent ?? []).toReversed()) {
    const read = joiningResultSchema.safeParse(value);
    if (read.success && (read.data.overallResultValues || read.data.stepResults)) return read.data;
  }
  return undefined;
}

function pullOf(meta: MetaData, joining: JoiningResult, origin: string): Read<ToldPull> {
  const torque = finalFigure(joining, 'torque');
  if (!torque.ok) return torque;
  if (!torque.value) return invalid('overallResultValues', 'the result has no torque', 'the final torque');
  const angle = finalFigure(joining, 'angle');
  if (!angle.ok) return angle;
  const steps = joining.trace?.stepTraces ?? [];
  const trace = traceOf(steps);
  const at = meta.processingTimes?.endTime ?? meta.creationTime;
  return ok({
    id: uuidV8(hash('sha256', JSON.stringify([origin, meta.resultId]))),
    from: (meta.associatedEntities ?? []).flatMap(({ entityId, entityOriginId }) =>
      [entityId, entityOriginId].flatMap((name) => name || []),
    ),
    takenAt: at?.toISOString(),
    torque: torque.value,
    angle: angle.value,
    fastestDegPerS: trace && readingOf(trace).fastestDegPerS,
    trace,
    samplesLost: trace ? 0 : steps.reduce((sum, step) => sum + step.numberOfTracePoints, 0),
  });
}

/** The figure that the operation ended with: of the whole, else of the last step that has one. */
function finalFigure(joining: JoiningResult, quantity: 'torque' | 'angle'): Read<ToldFigure | undefined> {
  const ofSteps = (joining.stepResults ?? []).toReversed().map(({ stepResultValues }) => stepResultValues);
  for (const values of [joining.overallResultValues, ...ofSteps]) {
    const fitting = (values ?? []).filter(({ physicalQuantity }) => physicalQuantity === QUANTITY[quantity]);
    const tagged = fitting.filter(({ valueTag }) => valueTag === FINAL_TAG);
    const [value, other] = tagged.length > 0 ? tagged : fitting;
    if (other)
      return invalid('overallResultValues', `more than one ${quantity} could be meant`, 'one with the tag FINAL');
    if (value) return figureOf(value, quantity);
  }
  return ok(undefined);
}

function figureOf({ measuredValue, engineeringUnits }: ResultValue, quantity: 'torque' | 'angle'): Read<ToldFigure> {
  const unit = unitMeant(engineeringUnits ?? {}, quantity);
  if (!unit) {
    const told = engineeringUnits?.displayName?.text ?? 'none';
    return invalid('engineeringUnits', `the unit of the ${quantity} is not known: ${told}`, `a unit of ${quantity}`);
  }
  const value = convert(measuredValue, unit, quantity === 'torque' ? 'N·m' : 'deg');
  return value.ok ? ok({ text: String(measuredValue), unit, value: value.value }) : value;
}
