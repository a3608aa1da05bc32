import { analyseTrace, type FindingKind, learn, learnable, traceOptionsSchema, typed } from '@clampwright/core/trace';
import { looseFastener, tightenedFastener } from '../fastener.ts';
import type { Fault } from '../fault.ts';
import type { Aim, SimulatedModel } from '../model.ts';
import { simulatePull } from '../pull.ts';

/** A way of pulling, with the limits that it is held to. */
export interface Practice {
  readonly aim: Aim;
  /** Torque to which the fastener was tightened before, N·m at the fastener; 0: it is loose. */
  readonly startsAtNm: number;
  readonly window: NonNullable<Parameters<typeof analyseTrace>[2]>;
}

/** What each fault is to be found as; absent: the curve has nothing against it. */
export const FOUND_AS: Partial<Record<Fault, FindingKind>> = {
  'crossed-thread': 'crossed-thread',
  'already-tight': 'already-tight',
  'stripped-thread': 'stripping',
  yielded: 'yielded',
  'pulled-too-fast': 'pulled-too-fast',
  'over-run': 'over-run',
  bottomed: 'bottomed',
  'too-soft': 'too-soft',
  jerked: 'jerked',
  'slipped-socket': 'slipped-socket',
  'two-pulls': 'two-pulls',
  'stick-slip': 'stick-slip',
  'turned-loose': 'loosening',
};

const TAUGHT_BY = 20;
const FIRST_TEACHER = 1_000_000;

/** Plays pulls and tells what is found on them, held to what sound pulls of the same joint have taught. */
export function finder(model: SimulatedModel, { aim, startsAtNm, window }: Practice) {
  const trace = (fault: Fault, seed: number) => {
    const fastener =
      startsAtNm > 0 ? tightenedFastener(model.joint, seed, startsAtNm) : looseFastener(model.joint, seed);
    return typed(simulatePull({ model, aim, fault, seed, fastener }).trace);
  };
  const untaught = traceOptionsSchema.parse({ startsAtNm });
  const figures = Array.from({ length: TAUGHT_BY }, (_, n) => {
    const read = analyseTrace(trace('none', FIRST_TEACHER + n), untaught, window);
    return read.kind === 'tightening' ? learnable(read.figures) : undefined;
  });
  const expected = learn(figures.filter((figure) => figure !== undefined));
  const options = { ...untaught, ...(expected ? { expected } : {}) };
  return (fault: Fault, seed: number): readonly FindingKind[] => {
    const read = analyseTrace(trace(fault, seed), options, window);
    return read.kind === 'loosening' ? ['loosening'] : read.findings.map(({ kind }) => kind);
  };
}

/** The two ways of the example joint: to 60 N·m, and from there on by 40 degrees. */
export const PRACTICES: Readonly<Record<'torque' | 'angle', Practice>> = {
  torque: { aim: { torqueNm: 60 }, startsAtNm: 0, window: { lowerNm: 57, targetNm: 60, upperNm: 63 } },
  angle: {
    aim: { angleDeg: 40, angleFromNm: 60 },
    startsAtNm: 60,
    window: {
      lowerNm: 100,
      targetNm: 120,
      upperNm: 140,
      lowerDeg: 35,
      targetDeg: 40,
      upperDeg: 45,
      angleFromNm: 60,
    },
  },
};
