import { checkOf } from '@clampwright/core/line';
import type { SimulatedPull } from '../simulated/index.ts';

/** What the wrench says of a pull besides what it measured. */
export interface PullStamp {
  /** Running number of the pull since the wrench was switched on. */
  readonly pull: number;
  readonly id: string;
  /** UTC with three decimals of the second. */
  readonly takenAt: string;
  readonly serial: string;
}

const checked = (text: string): string => `${text} ${checkOf(text)}\n`;
/** Plain decimals, never an exponent; no more than the six that the form allows. */
const figure = (value: number): string => String(Number(value.toFixed(6)));

/** What of a pull its lines tell. */
type ReadPull = Pick<SimulatedPull, 'trace' | 'shownTorqueNm' | 'shownAngleDeg' | 'fastestDegPerS'>;

/** A pull as the lines that the simulated wrench sends: its samples, then the result that closes it. */
export function linesOf(pull: ReadPull, stamp: PullStamp): readonly string[] {
  const { timeS, torqueNm, angleDeg } = pull.trace;
  const samples = timeS.map((time, i) =>
    checked(`s ${stamp.pull} ${figure(time)} ${figure(torqueNm[i]!)} ${figure(angleDeg[i]!)}`),
  );
  const reading = [pull.shownTorqueNm, pull.shownAngleDeg, pull.fastestDegPerS].map(figure).join(' ');
  const close = checked(`r ${stamp.pull} ${reading} ${timeS.length} ${stamp.takenAt} ${stamp.id} ${stamp.serial}`);
  return [...samples, close];
}
