import type { Failure } from '../../failure/failure.ts';
import type { AngleWindow, TorqueWindow } from '../../procedure/procedure.ts';
import { readWindow } from '../../procedure/read-window.ts';
import { LANGUAGES } from '../../quantity/language.ts';
import { inEachStage, refusal } from './refusal.ts';

/** A record shows what was typed beside what was judged: the two must be the same window, read in one of our languages. */
export const typedFits = inEachStage(({ torque, angle }, path) => [
  ...(torque && !isTorqueAsTyped(torque) ? [differs(`${path}.torque.typed`)] : []),
  ...(angle && !isAngleAsTyped(angle) ? [differs(`${path}.angle.typed`)] : []),
]);

const differs = (field: string): Failure =>
  refusal(field, 'what was typed is not the window that would be judged', 'the figures and unit of the window');

type Limits = readonly [lower: number, target: number, upper: number];

const isTorqueAsTyped = (window: TorqueWindow): boolean =>
  LANGUAGES.some((language) => {
    const read = readWindow(window.typed, 'torque', language);
    return read.ok && isSame(torqueLimits(window), torqueLimits(read.value), window.typed.form !== 'limits');
  });

const isAngleAsTyped = (window: AngleWindow): boolean =>
  LANGUAGES.some((language) => {
    const read = readWindow(window.typed, 'angle', language);
    return read.ok && isSame(angleLimits(window), angleLimits(read.value), window.typed.form !== 'limits');
  });

const torqueLimits = ({ lowerNm, targetNm, upperNm }: TorqueWindow): Limits => [lowerNm, targetNm, upperNm];
const angleLimits = ({ lowerDeg, targetDeg, upperDeg }: AngleWindow): Limits => [lowerDeg, targetDeg, upperDeg];

/** The last digits of a conversion may differ; where only limits were typed the target may lie anywhere between. */
function isSame(judged: Limits, typed: Limits, isTargetTyped: boolean): boolean {
  const tolerance = 1e-9 * typed[2];
  const differences = judged.map((figure, index) => Math.abs(figure - typed[index]!));
  return differences.every((difference, index) => difference <= tolerance || (index === 1 && !isTargetTyped));
}
