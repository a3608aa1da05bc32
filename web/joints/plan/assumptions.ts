import type { Neighbours } from '@clampwright/core/joint';

/** What is taken for granted, by its word in the catalogues. */
export function assumptionsOf({ model }: Neighbours) {
  const isPressed =
    (model?.kind === 'ring' && model.gasketUnloadingMPa !== undefined) ||
    ((model?.kind === 'plate' || model?.kind === 'strip') && model.bedUnloadingNPerMm3 !== undefined);
  return [
    ...(model ? [model.kind === 'plate' && model.edgeMm !== undefined ? ('plate-edges' as const) : model.kind] : []),
    'linear' as const,
    ...(isPressed ? ['pressed' as const] : []),
    'force' as const,
  ];
}
