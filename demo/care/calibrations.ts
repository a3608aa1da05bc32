import {
  type Calibration,
  type CalibrationSummary,
  type Comparison,
  calibrationPlan,
  type JudgedCalibration,
  judgeCalibration,
  type Wrench,
} from '@clampwright/core/wrench';
import { demoId } from '../identity.ts';
import { KEEPER } from '../people.ts';
import { dayBefore, instantBefore } from './days.ts';
import { certificateOn, demoReferences } from './references.ts';

/** One calibration of the invented past: how far the wrench was off at its lowest and its highest point. */
interface Past {
  readonly serial: string;
  readonly certificate: string;
  readonly daysAgo: number;
  readonly foundPercent: readonly [lowest: number, highest: number];
  readonly leftPercent?: readonly [lowest: number, highest: number];
  readonly note?: string;
}

/** Each wrench year by year, the oldest first. */
const PAST: readonly Past[] = [
  { serial: 'KH-101', certificate: 'KH-C-0219', daysAgo: 1170, foundPercent: [0.2, 0.1] },
  { serial: 'KH-101', certificate: 'KH-C-0287', daysAgo: 808, foundPercent: [0.5, 0.3] },
  { serial: 'KH-101', certificate: 'KH-C-0349', daysAgo: 445, foundPercent: [0.7, 0.4] },
  { serial: 'KH-101', certificate: 'KH-C-0412', daysAgo: 80, foundPercent: [1, 0.7] },
  { serial: 'KH-102', certificate: 'KH-C-0231', daysAgo: 1085, foundPercent: [0.3, 0.2] },
  { serial: 'KH-102', certificate: 'KH-C-0302', daysAgo: 720, foundPercent: [0.6, 0.5] },
  { serial: 'KH-102', certificate: 'KH-C-0398', daysAgo: 357, foundPercent: [0.9, 0.8] },
  {
    serial: 'KH-102',
    certificate: 'KH-C-0419',
    daysAgo: 4,
    foundPercent: [4.6, 6.1],
    leftPercent: [0.2, 0.1],
    note: 'Found off after a fall that nobody had told of; lever bearing replaced, adjusted.',
  },
  { serial: 'KH-103', certificate: 'KH-C-0244', daysAgo: 1130, foundPercent: [-0.4, -0.2] },
  { serial: 'KH-103', certificate: 'KH-C-0318', daysAgo: 770, foundPercent: [-0.3, -0.3] },
  { serial: 'KH-103', certificate: 'KH-C-0377', daysAgo: 404, foundPercent: [-0.5, -0.3] },
  { serial: 'KH-103', certificate: 'KH-C-0415', daysAgo: 40, foundPercent: [-0.4, -0.3] },
  { serial: 'KH-007', certificate: 'KH-C-0233', daysAgo: 1128, foundPercent: [1.4, 1.1] },
  { serial: 'KH-007', certificate: 'KH-C-0275', daysAgo: 765, foundPercent: [2.2, 1.9] },
  { serial: 'KH-007', certificate: 'KH-C-0301', daysAgo: 402, foundPercent: [2.9, 2.6] },
  { serial: 'KH-021', certificate: 'KH-C-0251', daysAgo: 1066, foundPercent: [-1.1, -0.9] },
  { serial: 'KH-021', certificate: 'KH-C-0339', daysAgo: 702, foundPercent: [-1.4, -1.1] },
  { serial: 'KH-021', certificate: 'KH-C-0407', daysAgo: 345, foundPercent: [-1.8, -1.2] },
];

/** What was kept and what follows from it. */
export interface DemoCalibration {
  readonly calibration: Calibration;
  readonly judged: JudgedCalibration;
}

/** Every calibration of these wrenches, the oldest first. */
export function demoCalibrations(now: Date, wrenches: readonly Wrench[]): readonly DemoCalibration[] {
  const references = demoReferences(now);
  return PAST.map((past) => {
    const wrench = wrenches.find(({ serial }) => serial === past.serial);
    if (!wrench) throw new Error(`there is no wrench ${past.serial}`);
    const calibratedOn = dayBefore(now, past.daysAgo);
    const left = past.leftPercent && comparison(wrench, past.leftPercent, instantBefore(now, past.daysAgo, '10:20'));
    const calibration: Calibration = {
      id: demoId(`calibration ${past.certificate}`),
      wrenchId: wrench.id,
      calibratedOn,
      dueOn: dayBefore(now, past.daysAgo - 365),
      certificate: past.certificate,
      by: KEEPER.name,
      place: 'Calibration bench, valley workshop',
      temperatureC: 21.5,
      humidityPercent: 48,
      reference: certificateOn(references, wrench.highestNm > 250 ? 'KH-R2' : 'KH-R1', calibratedOn),
      asFound: comparison(wrench, past.foundPercent, instantBefore(now, past.daysAgo, '08:10')),
      ...(left ? { asLeft: left } : {}),
      ...(past.note === undefined ? {} : { note: past.note }),
    };
    const judged = judgeCalibration(calibration, wrench, calibratedOn);
    if (!judged.ok) throw new Error(JSON.stringify(judged.failure));
    return { calibration, judged: judged.value };
  });
}

/** Percent; small enough that no repeat leaves the limits by itself. */
const SCATTER = [0.05, -0.12, 0.16, -0.08, -0.01];

function comparison(wrench: Wrench, [lowest, highest]: Past['foundPercent'], at: string): Comparison {
  const plan = calibrationPlan(wrench);
  if (!plan.ok) throw new Error(JSON.stringify(plan.failure));
  const { targetsNm, directions, preloadings } = plan.value;
  const [first = 0] = targetsNm;
  const range = (targetsNm.at(-1) ?? first) - first;
  const points = directions.flatMap((direction) =>
    targetsNm.map((targetNm) => {
      const share = range > 0 ? (targetNm - first) / range : 0;
      const deviation = lowest + share * (highest - lowest);
      const referenceNm = SCATTER.map((part) => Number((targetNm / (1 + (deviation + part) / 100)).toFixed(2)));
      return { direction, targetNm, referenceNm };
    }),
  );
  const spread = Number((first * 0.003).toFixed(3));
  const spreads = { reproducibility: spread, outputInterface: spread, driveInterface: spread, leverVariation: spread };
  return { at, preloadings, points, spreads };
}

/** What the last calibration up to a day says for a wrench. */
export const summaryOn = (
  calibrations: readonly DemoCalibration[],
  wrenchId: string,
  day: string,
): CalibrationSummary | undefined =>
  calibrations.findLast(({ calibration }) => calibration.wrenchId === wrenchId && calibration.calibratedOn <= day)
    ?.judged.summary;
