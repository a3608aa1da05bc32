import { invalid, type Result } from '../../failure/failure.ts';
import {
  type CalibrationInterval,
  calibrationInterval,
  INTERVAL_METHODS,
  type IntervalMethod,
} from './calibration-interval.ts';
import { type Found, pullsPerDay } from './history.ts';

/** What one method says of the next interval of a wrench, and whose calibrations it rests on. */
export interface IntervalProposal {
  readonly method: IntervalMethod;
  readonly restsOn: 'own' | 'kind';
  readonly calibrations: number;
  readonly interval: Result<CalibrationInterval>;
  /** Days to the day that is due, at the use there was, where the pulls come first. */
  readonly dueAfterDays: number | undefined;
}

interface ProposalInput {
  /** Of this wrench, the oldest first. */
  readonly own: readonly Found[];
  /** Of every wrench of its type and class, its own among them. */
  readonly kind: readonly Found[];
  readonly limitPercent: number;
  readonly currentIntervalDays: number;
  readonly currentIntervalPulls: number;
}

/** Share found inside, and confidence of the limits (common practice). */
const WANTED = { wantedShare: 0.95, confidence: 0.95 } as const;
/** Shorter or longer than this nobody proposes without a look (common practice). */
const BOUNDS = { shortestDays: 14, longestDays: 1095 } as const;

/** Every method of ILAC-G24:2007 / OIML D 10 on the histories at hand; each may refuse with its reason. */
export const intervalProposals = (input: ProposalInput): readonly IntervalProposal[] =>
  INTERVAL_METHODS.map((method) => proposalBy(method, input));

function proposalBy(
  method: IntervalMethod,
  { own, kind, limitPercent, currentIntervalDays, currentIntervalPulls }: ProposalInput,
): IntervalProposal {
  const restsOn = method === 'reliability' ? 'kind' : 'own';
  const all = restsOn === 'kind' ? kind : own;
  const history = method === 'control-chart' ? all.filter(({ leftPercent }) => leftPercent !== undefined) : all;
  const interval =
    history.length === 0
      ? invalid('history', 'No calibration followed another.', 'at least one calibration after another')
      : calibrationInterval({
          method,
          history,
          ...WANTED,
          ...BOUNDS,
          model: 'exponential',
          currentIntervalDays,
          currentIntervalPulls,
          extension: 0.1,
          limitPercent,
        });
  return { method, restsOn, calibrations: history.length, interval, dueAfterDays: dueAfter(interval, own) };
}

function dueAfter(interval: Result<CalibrationInterval>, own: readonly Found[]): number | undefined {
  if (!interval.ok) return undefined;
  const { intervalDays, intervalPulls } = interval.value;
  const rate = pullsPerDay(own) ?? 0;
  return Math.max(1, Math.floor(rate > 0 ? Math.min(intervalDays, intervalPulls / rate) : intervalDays));
}
