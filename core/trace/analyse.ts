import { extremesOf } from './extremes.ts';
import { type Figures, readCurve } from './figures.ts';
import type { Finding } from './finding.ts';
import { findingsOf } from './findings/rules.ts';
import type { Evidence, TraceOptions, TraceWindow } from './judged-by.ts';
import { isLoosening, type Loosening, looseningOf } from './loosening.ts';
import type { Samples } from './samples.ts';

/** What a trace says: figures of a tightening, or of a loosening, and what speaks against the pull. */
export type TraceAnalysis =
  | { readonly kind: 'tightening'; readonly figures: Figures; readonly findings: readonly Finding[] }
  | { readonly kind: 'loosening'; readonly loosening: Loosening };

/** A fastener that turns at less than this share of what it stood at was let loose, or is another one. */
const TIGHT_SHARE = 0.6;

/**
 * Reads a trace. Negative torque is loosening and is never judged as tightening.
 *
 * @param samples of one pull, at the fastener: N·m, degrees, seconds; typed arrays are fastest
 * @param window  what the pull was to reach, where it is known
 */
export function analyseTrace(samples: Samples, options: TraceOptions, window: TraceWindow = {}): TraceAnalysis {
  const extremes = extremesOf(samples);
  if (isLoosening(extremes)) return { kind: 'loosening', loosening: looseningOf(samples) };
  const { targetNm, lowerNm } = window;
  const read = readCurve(samples, { ...options, targetNm }, extremes);
  const wantedNm = targetNm ?? lowerNm ?? read.figures.peakTorqueNm;
  const wasTight = read.figures.torqueAtFirstTurnNm >= TIGHT_SHARE * options.startsAtNm;
  const startedNm = wasTight ? options.startsAtNm : 0;
  const evidence: Evidence = { ...read, window, options, expected: options.expected, wantedNm, startedNm };
  return { kind: 'tightening', figures: read.figures, findings: findingsOf(evidence) };
}
