import type { Provenance } from './provenance.ts';

/** Range of the friction coefficient of thread and bearing face at room temperature. */
export interface FrictionClassRow {
  readonly name: 'A' | 'B' | 'C' | 'D' | 'E';
  readonly lowest: number;
  /** Class E has no upper end: such surfaces seize. */
  readonly highest?: number;
  readonly had: Provenance;
}

// VDI 2230-1:2015, table A5, friction classes; the same since 2003 (three secondary tables that agree, read).
export const FRICTION_CLASSES: readonly FrictionClassRow[] = [
  { name: 'A', lowest: 0.04, highest: 0.1, had: 'read' },
  { name: 'B', lowest: 0.08, highest: 0.16, had: 'read' },
  { name: 'C', lowest: 0.14, highest: 0.24, had: 'read' },
  { name: 'D', lowest: 0.2, highest: 0.35, had: 'read' },
  { name: 'E', lowest: 0.3, had: 'read' },
];

/** Surface and lubricant with the friction class, or the two classes, that they are found in. */
export interface LubricationRow {
  readonly surface: string;
  readonly lubricant: string;
  readonly classes: readonly FrictionClassRow['name'][];
  readonly had: Provenance;
}

// VDI 2230-1:2015, table A5, typical surfaces and lubricants of each class (secondary tables, read). Steel stands there as bright,
// black oxide or phosphated; electroplated as Zn, Zn/Fe or Zn/Ni.
// biome-ignore format: one row a line
export const LUBRICATIONS: readonly LubricationRow[] = [
  { surface: 'steel', lubricant: 'solid lubricant (MoS2, graphite, PTFE) in lacquer or paste', classes: ['A', 'B'], had: 'read' },
  { surface: 'steel', lubricant: 'wax', classes: ['A', 'B'], had: 'read' },
  { surface: 'steel', lubricant: 'grease', classes: ['B'], had: 'read' },
  { surface: 'steel', lubricant: 'oil', classes: ['B'], had: 'read' },
  { surface: 'steel', lubricant: 'as delivered, lightly oiled', classes: ['B', 'C'], had: 'read' },
  { surface: 'electroplated', lubricant: 'solid lubricant (MoS2, graphite, PTFE) in lacquer or paste', classes: ['A', 'B'], had: 'read' },
  { surface: 'electroplated', lubricant: 'wax', classes: ['A', 'B'], had: 'read' },
  { surface: 'electroplated', lubricant: 'oil', classes: ['B'], had: 'read' },
  { surface: 'electroplated', lubricant: 'grease', classes: ['B'], had: 'read' },
  { surface: 'electroplated', lubricant: 'none', classes: ['C', 'D'], had: 'read' },
  { surface: 'zinc flake', lubricant: 'solid lubricant or wax, also in the top coat', classes: ['A', 'B'], had: 'read' },
  { surface: 'zinc flake', lubricant: 'oil', classes: ['B'], had: 'read' },
  { surface: 'zinc flake', lubricant: 'none', classes: ['C'], had: 'read' },
  { surface: 'hot-dip galvanized', lubricant: 'MoS2, graphite or wax', classes: ['B'], had: 'read' },
  { surface: 'hot-dip galvanized', lubricant: 'none', classes: ['D'], had: 'read' },
  { surface: 'organic coating', lubricant: 'solid lubricant or wax in the coating', classes: ['B'], had: 'read' },
  { surface: 'austenitic steel', lubricant: 'solid lubricant, wax or paste', classes: ['B', 'C'], had: 'read' },
  { surface: 'austenitic steel', lubricant: 'oil', classes: ['D'], had: 'read' },
  { surface: 'austenitic steel', lubricant: 'none', classes: ['E'], had: 'read' },
  { surface: 'aluminium or magnesium alloy', lubricant: 'solid lubricant, wax, grease or oil', classes: ['B'], had: 'read' },
  { surface: 'aluminium or magnesium alloy', lubricant: 'none', classes: ['E'], had: 'read' },
  { surface: 'any', lubricant: 'thread adhesive', classes: ['C'], had: 'read' },
];
