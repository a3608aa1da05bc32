import { readingOf } from '../trace/reading.ts';
import type { LineSaid } from './read-line.ts';
import type { ToldFigure, ToldPull } from './told-pull.ts';

/** Most samples of one pull; the same bound as a kept trace has. */
const MOST_SAMPLES = 200_000;
/** A pull shorter than this is a knock against the wrench, not a pull. */
const FEWEST_SAMPLES = 2;

/** A pull whose samples are still coming. */
export interface Stretch {
  readonly number: number | undefined;
  /** Takes one more sample; its time since the pull began, s. */
  readonly add: (said: LineSaid, samplesPerSecond: number | undefined) => number;
  /** How many samples in succession, up to the last one, were below the threshold. */
  readonly below: () => number;
  /** The pull as a result line tells it, with the samples where all of them came. */
  readonly closedBy: (said: LineSaid) => ToldPull;
  /** The pull as its samples alone tell it; undefined when they are too few to be one. */
  readonly whole: () => ToldPull | undefined;
}

/** @param thresholdNm torque below which a stream has ended; 0 where it ends otherwise */
export function stretchOf(number: number | undefined, thresholdNm: number): Stretch {
  const [timeS, angleDeg, torqueNm]: [number[], number[], number[]] = [[], [], []];
  let count = 0;
  let hasAngles = true;
  let below = 0;
  let peak: ToldFigure | undefined;
  let furthest: ToldFigure | undefined;
  let serial: string | undefined;

  const traceOf = () => ({ timeS, angleDeg, torqueNm });
  const isWhole = () => hasAngles && count === timeS.length && count >= FEWEST_SAMPLES;

  return {
    number,
    add: ({ torque, angle, elapsedS, serial: named }, samplesPerSecond = 1) => {
      const sinceS = elapsedS === undefined ? count / samplesPerSecond : elapsedS;
      serial = named ?? serial;
      if (torque && (!peak || torque.value > peak.value)) peak = torque;
      if (angle && (!furthest || angle.value > furthest.value)) furthest = angle;
      hasAngles &&= angle !== undefined;
      if (timeS.length < MOST_SAMPLES) {
        timeS.push(sinceS);
        angleDeg.push(angle?.value ?? 0);
        torqueNm.push(torque?.value ?? 0);
      }
      below = (torque?.value ?? 0) < thresholdNm ? below + 1 : 0;
      count += 1;
      return sinceS;
    },
    below: () => below,
    closedBy: (said) => {
      const wanted = said.sampleCount ?? count;
      const isComplete = isWhole() && count === wanted;
      return {
        ...bareOf(said),
        ...(isComplete ? { trace: traceOf() } : {}),
        samplesLost: Math.max(0, wanted - count),
      };
    },
    whole: () => {
      if (!peak || count < FEWEST_SAMPLES) return undefined;
      const told = { from: serial === undefined ? [] : [serial], torque: peak, samplesLost: 0 };
      if (!isWhole()) return { ...told, angle: furthest };
      return { ...told, angle: furthest, fastestDegPerS: readingOf(traceOf()).fastestDegPerS, trace: traceOf() };
    },
  };
}

/** A pull as its result line alone tells it. */
export function bareOf(said: LineSaid): ToldPull {
  const { torque, angle, serial, position, takenAt, fastestDegPerS, sampleCount = 0 } = said;
  if (!torque) throw new Error('a result line has a torque: the description sees to it');
  const from = serial === undefined ? [] : [serial];
  return { from, position, takenAt, torque, angle, fastestDegPerS, samplesLost: sampleCount };
}
