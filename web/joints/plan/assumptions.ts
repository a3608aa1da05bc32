import type { Neighbours } from '@clampwright/core/joint';
import type { InteractionModel } from '@clampwright/core/layout';

/** What is taken for granted, by its word in the catalogues. */
export function assumptionsOf({ model }: Neighbours) {
  const isPressed =
    (model?.kind === 'ring' && model.gasketUnloadingMPa !== undefined) ||
    ((model?.kind === 'plate' || model?.kind === 'strip') && model.bedUnloadingNPerMm3 !== undefined);
  return [
    ...(model ? [shapeOf(model)] : []),
    'linear' as const,
    ...(isPressed ? ['pressed' as const] : []),
    'force' as const,
  ];
}

function shapeOf(model: InteractionModel) {
  if (model.kind === 'plate' && model.edgeMm !== undefined) return 'plate-edges' as const;
  return model.kind === 'ring' && model.hubN > 0 ? ('ring-held' as const) : model.kind;
}
