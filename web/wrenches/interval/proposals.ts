import type { Calibration } from '@clampwright/core/wrench';
import {
  careSpans,
  type Found,
  type IntervalProposal,
  intervalProposals,
  permissibleDeviationPercent,
  pullsBetween,
  toolClass,
} from '@clampwright/core/wrench';
import type { WrenchCare } from '@clampwright/server/contract';

const YEAR_DAYS = 365;

/**
 * What every method proposes for a wrench.
 *
 * @param now a calibration that is not kept yet: how it was found counts as well
 */
export function proposalsFor(care: WrenchCare, now?: Calibration): readonly IntervalProposal[] {
  const { wrench, history, historyAlike } = care;
  const known = toolClass(wrench.type, wrench.class);
  if (!known.ok) return [];
  const latest = now ? foundNow(care, now) : [];
  return intervalProposals({
    own: [...history, ...latest],
    kind: [...historyAlike, ...latest],
    limitPercent: permissibleDeviationPercent(known.value, wrench.highestNm),
    currentIntervalDays: daysInForce(care),
    currentIntervalPulls: pullsBetween(wrench),
  });
}

function foundNow(care: WrenchCare, now: Calibration): readonly Found[] {
  const span = careSpans({ ...care, calibrations: [...care.calibrations, now] }).find(
    ({ to }) => to === now.calibratedOn,
  );
  if (!span) return [];
  return [care.pullsSince > 0 ? { ...span.found, pulls: care.pullsSince } : span.found];
}

function daysInForce({ wrench: { calibration } }: WrenchCare): number {
  return calibration ? daysFrom(calibration.calibratedOn, calibration.dueOn) : YEAR_DAYS;
}

const DAY_MS = 86_400_000;
const daysFrom = (from: string, to: string): number => Math.max(1, (Date.parse(to) - Date.parse(from)) / DAY_MS);

/** ISO 8601 day so many days after another. */
export const dayAfter = (day: string, days: number): string =>
  new Date(Date.parse(day) + days * DAY_MS).toISOString().slice(0, 10);
