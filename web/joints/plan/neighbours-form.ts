import type { Neighbours, OrderPlan } from '@clampwright/core/joint';
import type { InteractionModel, Layout } from '@clampwright/core/layout';
import type { Language } from '@clampwright/core/quantity';
import { asTyped } from '../form/as-typed.ts';

/** How the neighbours are told: a model of the joint, or what was measured. */
export const NEIGHBOUR_KINDS = [
  'ring',
  'plate',
  'strip',
  'neighbours',
  'interaction',
  'compliance',
  'learned',
] as const;
export type NeighbourKind = (typeof NEIGHBOUR_KINDS)[number];

/** As the models of the core call them. */
type FigureName =
  | 'outerMm'
  | 'innerMm'
  | 'heightMm'
  | 'gasketOuterMm'
  | 'gasketInnerMm'
  | 'gasketThicknessMm'
  | 'gasketMPa'
  | 'gasketUnloadingMPa'
  | 'boltNPerMm'
  | 'modulusMPa'
  | 'poisson'
  | 'pipeWallMm'
  | 'hubN'
  | 'bedNPerMm3'
  | 'bedUnloadingNPerMm3'
  | 'edgeMm'
  | 'bedFromEdgeMm'
  | 'bedWidthMm'
  | 'endMm'
  | 'widthMm'
  | 'neighbour'
  | 'decay';

export interface ModelFigure {
  readonly name: FigureName;
  readonly unit: string;
  readonly isOptional?: boolean;
  /** What an empty field stands for, by its word in the catalogues. */
  readonly empty?: 'no-pipe' | 'from-edge' | 'whole-inside';
}

const mm = (name: FigureName): ModelFigure => ({ name, unit: 'mm' });
const BOLT: ModelFigure = { name: 'boltNPerMm', unit: 'N/mm' };
const STEEL: ModelFigure = { name: 'modulusMPa', unit: 'MPa' };
const POISSON: ModelFigure = { name: 'poisson', unit: '', isOptional: true };
const BED: readonly ModelFigure[] = [
  { name: 'bedNPerMm3', unit: 'N/mm³' },
  { name: 'bedUnloadingNPerMm3', unit: 'N/mm³', isOptional: true },
];

/** The figures of each model; what the layout tells already is not asked again. */
export const MODEL_FIGURES = {
  ring: [
    mm('outerMm'),
    mm('innerMm'),
    mm('heightMm'),
    mm('gasketOuterMm'),
    mm('gasketInnerMm'),
    mm('gasketThicknessMm'),
    { name: 'gasketMPa', unit: 'MPa' },
    { name: 'gasketUnloadingMPa', unit: 'MPa', isOptional: true },
    BOLT,
    STEEL,
    POISSON,
    { ...mm('pipeWallMm'), isOptional: true, empty: 'no-pipe' },
    { name: 'hubN', unit: 'N', isOptional: true },
  ],
  plate: [
    mm('heightMm'),
    mm('edgeMm'),
    ...BED,
    { ...mm('bedFromEdgeMm'), isOptional: true, empty: 'from-edge' },
    { ...mm('bedWidthMm'), isOptional: true, empty: 'whole-inside' },
    BOLT,
    STEEL,
    POISSON,
  ],
  strip: [mm('endMm'), mm('widthMm'), mm('heightMm'), ...BED, BOLT, STEEL],
  neighbours: [
    { name: 'neighbour', unit: '' },
    { name: 'decay', unit: '' },
  ],
} as const satisfies Record<InteractionModel['kind'], readonly ModelFigure[]>;

/** What was measured after a pull, in which unit. */
export const MEASURED_QUANTITIES = ['forceKN', 'torqueNm', 'elongationMm'] as const;
export type MeasuredQuantity = (typeof MEASURED_QUANTITIES)[number];

/** What one bolt does to the next, while it is written. */
export interface NeighboursForm {
  readonly isUsed: boolean;
  readonly kind: NeighbourKind;
  /** Typed figures of the models, by name. */
  readonly figures: Readonly<Record<string, string>>;
  /** A pasted matrix, a row on each line. */
  readonly matrix: string;
  readonly measured: {
    readonly quantity: MeasuredQuantity;
    /** Pull, position, figure: one measurement on each line. */
    readonly rows: string;
    readonly order: string;
    /** Force that each round brought its bolts to, kN. */
    readonly roundsKN: string;
    readonly boltNPerMm: string;
    /** Torque over force, N·m for each kN. */
    readonly nmPerKN: string;
  };
  readonly note: string;
  /** Of what was kept, while nothing of it is changed. */
  readonly kept: Neighbours | undefined;
  readonly plan: OrderPlan | undefined;
}

export const BLANK_NEIGHBOURS: NeighboursForm = {
  isUsed: false,
  kind: 'ring',
  figures: { modulusMPa: '200000' },
  matrix: '',
  measured: { quantity: 'forceKN', rows: '', order: '', roundsKN: '', boltNPerMm: '', nmPerKN: '' },
  note: '',
  kept: undefined,
  plan: undefined,
};

/** Which ways there are for a layout. */
export function kindsFor(layout: Layout | undefined): readonly NeighbourKind[] {
  switch (layout?.kind) {
    case 'rectangle':
    case 'points':
      return ['plate', 'interaction', 'compliance'];
    case 'line':
      return ['strip', 'plate', 'neighbours', 'learned', 'interaction', 'compliance'];
    default:
      return ['ring', 'plate', 'neighbours', 'learned', 'interaction', 'compliance'];
  }
}

/** The way that is taken: one that the layout cannot have gives way to its first. */
export function kindIn({ kind }: NeighboursForm, layout: Layout | undefined): NeighbourKind {
  const kinds = kindsFor(layout);
  return kinds.includes(kind) ? kind : (kinds[0] ?? kind);
}

/** Kept neighbours as they stand in the editor. */
export function neighboursForm(kept: Neighbours, language: Language): NeighboursForm {
  const { model, interaction, complianceMmPerN, note, plan, how } = kept;
  const blank = { ...BLANK_NEIGHBOURS, isUsed: true, note, plan, kept };
  if (how === 'learned') return { ...blank, kind: 'learned' };
  if (interaction) return { ...blank, kind: 'interaction', matrix: matrixText(interaction, language) };
  if (complianceMmPerN) return { ...blank, kind: 'compliance', matrix: matrixText(complianceMmPerN, language) };
  if (!model) return blank;
  const figures = Object.entries(model).flatMap(([name, value]) =>
    typeof value === 'number' ? [[name, asTyped(value, language)] as const] : [],
  );
  return { ...blank, kind: model.kind, figures: Object.fromEntries(figures) };
}

const matrixText = (rows: readonly (readonly number[])[], language: Language): string =>
  rows.map((row) => row.map((value) => asTyped(value, language)).join('\t')).join('\n');
