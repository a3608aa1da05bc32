import { z } from 'zod';
import { invalid } from '../failure/failure.ts';

const MOST_SAMPLES = 200_000;
const series = (what: string) => z.array(z.number()).min(2).max(MOST_SAMPLES).describe(what);

/** The samples of one pull, as calculations take them. */
export const samplesFields = {
  angleDeg: series('angle of each sample in the order they came, degrees'),
  torqueNm: series('torque of each sample, N·m; negative is loosening'),
  timeS: series('time of each sample, s').optional(),
};

export interface SamplesTyped {
  readonly angleDeg: readonly number[];
  readonly torqueNm: readonly number[];
  readonly timeS?: readonly number[] | undefined;
}

/** The refusal of series that are not equally long. */
export function unequal({ angleDeg, torqueNm, timeS }: SamplesTyped): ReturnType<typeof invalid> | undefined {
  const wanted = angleDeg.length;
  if (torqueNm.length !== wanted)
    return invalid('torqueNm', `There are ${torqueNm.length} torques and ${wanted} angles.`, `${wanted} torques`);
  if (timeS && timeS.length !== wanted)
    return invalid('timeS', `There are ${timeS.length} times and ${wanted} angles.`, `${wanted} times`);
  return undefined;
}
