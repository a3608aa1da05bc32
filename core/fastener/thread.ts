import { METRIC_ROWS, type MetricRow } from './metric-threads.ts';
import type { OwnThread } from './own-thread.ts';
import { UNIFIED_ROWS, type UnifiedRow } from './unified-threads.ts';

/** By whole numbers, so that 3/8 in is 9.525 mm and not 9.524999999999999. */
export const inchesToMm = (inches: number): number => (inches * 127) / 5;

/** A thread by its basic size; everything else of it follows from the basic profile. */
export interface Thread {
  /** As the standard writes it: `M10`, `M10x1.25`, `3/8-16 UNC`, `2-8 UN`. */
  readonly designation: string;
  readonly system: 'ISO metric' | 'Unified';
  readonly series: 'coarse' | 'fine' | 'UNC' | 'UNF' | '8-UN' | 'own';
  /** The part ahead of the pitch: `M10`, `3/8`. */
  readonly size: string;
  readonly majorDiameterMm: number;
  readonly pitchMm: number;
  /** All that is told of a bolt of one’s own; it goes before the tables and the basic profile. */
  readonly own?: OwnThread;
}

function metricThreads({ majorMm, coarseMm, fineMm }: MetricRow): readonly Thread[] {
  const size = `M${majorMm}`;
  const common = { system: 'ISO metric', size, majorDiameterMm: majorMm } as const;
  const coarse =
    coarseMm === undefined ? [] : [{ ...common, designation: size, series: 'coarse', pitchMm: coarseMm } as const];
  return [
    ...coarse,
    ...fineMm.map((pitchMm) => ({ ...common, designation: `${size}x${pitchMm}`, series: 'fine', pitchMm }) as const),
  ];
}

function unifiedThreads({ size, majorIn, unc, unf, un8 }: UnifiedRow): readonly Thread[] {
  const thread = (series: 'UNC' | 'UNF' | '8-UN', perInch: number): Thread => ({
    designation: `${size}-${perInch} ${series === '8-UN' ? 'UN' : series}`,
    system: 'Unified',
    series,
    size,
    majorDiameterMm: inchesToMm(majorIn),
    pitchMm: 127 / (5 * perInch),
  });
  return [
    ...(unc === undefined ? [] : [thread('UNC', unc)]),
    ...(unf === undefined ? [] : [thread('UNF', unf)]),
    ...(un8 === undefined ? [] : [thread('8-UN', un8)]),
  ];
}

/** Every thread known, metric then inch, by diameter. */
export const THREADS: readonly Thread[] = [
  ...METRIC_ROWS.flatMap(metricThreads),
  ...UNIFIED_ROWS.flatMap(unifiedThreads),
];
