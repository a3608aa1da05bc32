import type { Language } from '@clampwright/core/quantity';
import type { Paper } from '@clampwright/core/record';
import type { Fault } from '@clampwright/intake/simulated';
import type { FileTaking } from '@clampwright/server';

/* Choices that the help lists. Held here, types of the rooms alone, so that the help loads no room. */

export const FORMATS = ['json', 'pdf', 'html', 'csv'] as const;
export type Format = (typeof FORMATS)[number];

export const LANGUAGES = ['en', 'de', 'fr', 'es'] as const satisfies readonly Language[];

export const PAPERS = ['A4', 'Letter'] as const satisfies readonly Paper[];

export const MODES = ['all-or-nothing', 'good-lines', 'preview'] as const satisfies readonly FileTaking['mode'][];

export const FAULTS = [
  'none',
  'crossed-thread',
  'already-tight',
  'stripped-thread',
  'yielded',
  'pulled-too-fast',
  'stopped-short',
  'over-run',
  'bottomed',
  'too-soft',
  'jerked',
  'slipped-socket',
  'two-pulls',
  'stick-slip',
  'turned-loose',
] as const satisfies readonly Fault[];
