export { type CoverShape, coverShape } from './cover/cover-shape.ts';
export { type InteractionFitRequest, interactionFit } from './fit/interaction-fit.ts';
export { inGroups } from './in-groups.ts';
export { endlessBeam, freeBeam } from './interaction/beam-on-bed.ts';
export {
  type ElasticInteraction,
  type ElasticInteractionRequest,
  elasticInteraction,
  elasticInteractionRequestSchema,
} from './interaction/elastic-interaction.ts';
export { interactionOf } from './interaction/from-interaction.ts';
export { impliedGap, momentNmm, type NoGap } from './interaction/implied-gap.ts';
export { modelled } from './interaction/model.ts';
export { type InteractionModel, modelSchema } from './interaction/model-schema.ts';
export { kei, plateClosing, plateFigures } from './interaction/plate-on-bed.ts';
export { ringClosing } from './interaction/ring-model.ts';
export { simulate } from './interaction/simulate.ts';
export { jointFrom } from './interaction/source.ts';
export { matrixOf } from './interaction/square-matrix.ts';
export { type DrawnSpot, type JointDrawing, jointDrawing } from './joint-drawing.ts';
export * from './layout.ts';
export * from './order-request.ts';
export * from './places.ts';
export {
  type RoundTargets,
  type RoundTargetsRequest,
  roundTargets,
  roundTargetsRequestSchema,
} from './plan/round-targets.ts';
export { positionsInOrder } from './positions-in-order.ts';
export {
  type OrderSearchRequest,
  orderSearchRequestSchema,
  type SearchProgress,
  searching,
} from './search/order-search.ts';
export { MARK_KINDS, type MarkKind, verdictMark } from './verdict-mark.ts';
