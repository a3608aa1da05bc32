import { parse } from '@clampwright/core/failure';
import type { Neighbours } from '@clampwright/core/joint';
import {
  countPlaces,
  type InteractionFitRequest,
  type InteractionModel,
  interactionFit,
  type Layout,
  modelSchema,
} from '@clampwright/core/layout';
import { figuresIn, matrixIn, wholesIn } from '../../forms/read-rows.ts';
import type { Reader } from '../../forms/reader.ts';
import { whole } from '../../forms/whole.ts';
import { kindIn, MODEL_FIGURES, type ModelFigure, type NeighboursForm } from './neighbours-form.ts';

/** What one bolt does to the next as the form has it; undefined while something is missing or wrong. */
export function readNeighbours(
  form: NeighboursForm,
  layout: Layout | undefined,
  reader: Reader,
): Neighbours | undefined {
  const source = sourceOf(form, layout, reader);
  if (!source) return undefined;
  return { ...source, note: form.note.trim(), ...(form.plan ? { plan: form.plan } : {}) };
}

type Source = Omit<Neighbours, 'note' | 'plan'>;

function sourceOf(form: NeighboursForm, layout: Layout | undefined, reader: Reader): Source | undefined {
  const kind = kindIn(form, layout);
  switch (kind) {
    case 'interaction': {
      const interaction = matrixIn(form.matrix, 'neighbours.interaction', reader);
      return interaction && { how: 'measured', interaction };
    }
    case 'compliance': {
      const complianceMmPerN = matrixIn(form.matrix, 'neighbours.complianceMmPerN', reader);
      return complianceMmPerN && { how: 'measured', complianceMmPerN };
    }
    case 'learned':
      return learned(form, layout, reader);
    default: {
      const model = layout && readModel(kind, form.figures, layout, reader);
      return model && { how: 'dimensions', model };
    }
  }
}

/** The joint's own dimensions go into its model. */
function fromLayout(kind: InteractionModel['kind'], layout: Layout): Readonly<Record<string, unknown>> {
  const count = countPlaces(layout);
  switch (kind) {
    case 'ring':
      return { count, ...(layout.kind === 'circle' ? { boltCircleMm: layout.diameterMm } : {}) };
    case 'plate':
      return { layout };
    case 'strip':
      return { count, ...(layout.kind === 'line' ? { spacingMm: layout.pitchMm } : {}) };
    case 'neighbours':
      return { count, arrangement: layout.kind === 'circle' ? 'circle' : 'line' };
  }
}

function readModel(
  kind: InteractionModel['kind'],
  texts: Readonly<Record<string, string>>,
  layout: Layout,
  reader: Reader,
): InteractionModel | undefined {
  const wanted: readonly ModelFigure[] = MODEL_FIGURES[kind];
  const known = wanted.filter(({ name, isOptional }) => !isOptional || (texts[name] ?? '').trim() !== '');
  const figures = whole(
    Object.fromEntries(
      known.map(({ name }) => [name, reader.number(`neighbours.model.${name}`, texts[name] ?? '')] as const),
    ),
  );
  if (!figures) return undefined;
  return reader.take('neighbours.model', parse(modelSchema, { kind, ...fromLayout(kind, layout), ...figures }));
}

/** The kept fit stands until something new is measured. */
function learned(form: NeighboursForm, layout: Layout | undefined, reader: Reader): Source | undefined {
  const { kept, measured } = form;
  if (kept?.how === 'learned' && measured.rows.trim() === '') {
    const { how, model, fit } = kept;
    return { how, ...(model ? { model } : {}), ...(fit ? { fit } : {}) };
  }
  const request = layout && fitRequest(form, layout, reader);
  const fit = request && reader.take('neighbours', interactionFit(request));
  if (!request || !fit) return undefined;
  const { arrangement, count } = request;
  const { neighbour, decay, residualN, neighbourUncertainty, decayUncertainty } = fit;
  return {
    how: 'learned',
    model: { kind: 'neighbours', arrangement, count, neighbour, decay },
    fit: {
      rows: request.measured.length,
      residualN,
      ...(neighbourUncertainty === undefined ? {} : { neighbourUncertainty }),
      ...(decayUncertainty === undefined ? {} : { decayUncertainty }),
    },
  };
}

function fitRequest({ measured }: NeighboursForm, layout: Layout, reader: Reader): InteractionFitRequest | undefined {
  const { quantity } = measured;
  const order = wholesIn(measured.order, 'neighbours.order', reader);
  const roundsKN = figuresIn(measured.roundsKN, 'neighbours.roundsKN', reader);
  const rows = matrixIn(measured.rows, 'neighbours.measured', reader);
  const perUnit =
    quantity === 'forceKN'
      ? 1000
      : quantity === 'torqueNm'
        ? inverse(reader.number('neighbours.nmPerKN', measured.nmPerKN, { isPositive: true }))
        : reader.number('neighbours.boltNPerMm', measured.boltNPerMm, { isPositive: true });
  if (!order || !roundsKN || !rows || perUnit === undefined) return undefined;
  const odd = rows.find((row) => row.length !== 3);
  if (odd) return reader.fault('neighbours.measured', { kind: 'mend', word: 'three-figures' });
  return {
    arrangement: layout.kind === 'circle' ? 'circle' : 'line',
    count: countPlaces(layout),
    order,
    targetsN: roundsKN.map((round) => round * 1000),
    measured: rows.map(([afterPull = 0, position = 0, figure = 0]) => ({
      afterPull,
      position,
      forceN: figure * perUnit,
    })),
  };
}

const inverse = (nmPerKN: number | undefined): number | undefined => nmPerKN && 1000 / nmPerKN;
