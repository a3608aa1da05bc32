import { z } from 'zod';
import { invalid, ok, type Result } from '../../failure/failure.ts';
import { type Remark, remark } from '../../language/mechanics/remark.ts';
import { MOST_POSITIONS } from '../layout.ts';
import { complianceFromInteraction } from './from-interaction.ts';
import { modelled } from './model.ts';
import { modelSchema } from './model-schema.ts';
import type { GivingWay } from './simulate.ts';
import { asCompliance, squareMatrix } from './square-matrix.ts';

const matrixSchema = z
  .array(z.array(z.number().min(-1e9).max(1e9)).min(1).max(MOST_POSITIONS))
  .min(1)
  .max(MOST_POSITIONS);

/** How the bolts of a joint answer to each other: one of three. */
export const sourceFields = {
  complianceMmPerN: matrixSchema
    .describe(
      'nut travel of position i for a unit of force on bolt j with all others free, the bolts’ own compliance included, mm/N; symmetric, positive definite',
    )
    .optional(),
  interaction: matrixSchema
    .describe('instead: change of force of position i for a unit put on bolt j with all tight; diagonal 1')
    .optional(),
  model: modelSchema.describe('instead: the joint’s dimensions, from which it is worked out').optional(),
};

const sourceSchema = z.object(sourceFields);
export type InteractionSource = z.infer<typeof sourceSchema>;

export type SourceField = keyof InteractionSource;

/** A joint as its bolts feel it. */
export interface SourcedJoint extends GivingWay {
  readonly count: number;
  /** Where it came from, for refusals. */
  readonly field: SourceField;
  readonly assumptions: readonly Remark[];
}

const ONE_OF_THREE = 'complianceMmPerN, interaction or model, one of them';

/** Reads the one of three that is given; refused with the field, and in a matrix with the entry. */
export function jointFrom({ complianceMmPerN, interaction, model }: InteractionSource): Result<SourcedJoint> {
  const given = [complianceMmPerN, interaction, model].filter((one) => one !== undefined);
  if (given.length > 1) {
    const surplus = interaction !== undefined && complianceMmPerN !== undefined ? 'interaction' : 'model';
    return invalid(surplus, 'The joint is described twice.', ONE_OF_THREE);
  }
  if (complianceMmPerN) {
    const matrix = squareMatrix(complianceMmPerN, 'complianceMmPerN');
    if (!matrix.ok) return matrix;
    const read = asCompliance(matrix.value, 'complianceMmPerN');
    return read.ok ? sourced('complianceMmPerN', { first: read.value }) : read;
  }
  if (interaction) {
    const matrix = squareMatrix(interaction, 'interaction');
    if (!matrix.ok) return matrix;
    const read = complianceFromInteraction(matrix.value, 'interaction');
    return read.ok ? sourced('interaction', { first: read.value }) : read;
  }
  if (!model) return invalid('complianceMmPerN', 'It is missing.', ONE_OF_THREE);
  const read = modelled(model);
  return read.ok ? sourced('model', read.value, read.value.assumptions) : read;
}

const MEASURED = [remark('matrix-holds'), remark('no-creep')];

const sourced = (field: SourceField, givingWay: GivingWay, assumptions: readonly Remark[] = MEASURED) =>
  ok({
    first: givingWay.first,
    ...(givingWay.later ? { later: givingWay.later } : {}),
    count: givingWay.first.size,
    field,
    assumptions,
  });
