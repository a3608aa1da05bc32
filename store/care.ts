import type { Result } from '@clampwright/core/failure';
import {
  type BeforeUseCheck,
  beforeUseCheckSchema,
  type Calibration,
  type CalibrationSummary,
  calibrationSchema,
  type Recall,
  type Recheck,
  recallSchema,
  recheckSchema,
  type Wrench,
} from '@clampwright/core/wrench';
import { type Engine, transact } from './engine.ts';
import { appendTo, type Log, type LogKind, logOn } from './log.ts';
import { calibrate } from './wrenches.ts';

/** What the keeper of the wrenches says of them, one thing after the other. */
export interface Care {
  readonly calibrations: Omit<Log<Calibration>, 'append'> & {
    /** Keeps a calibration with its readings, and what it says for the wrench. */
    append(calibration: Calibration, summary: CalibrationSummary): Promise<Result<Wrench>>;
  };
  readonly checks: Log<BeforeUseCheck>;
  readonly recalls: Log<Recall>;
  /** Listed by recall. */
  readonly rechecks: Log<Recheck>;
}

const OF_WRENCH = {
  table: 'wrenches',
  what: 'wrench',
  idOf: ({ wrenchId }: { readonly wrenchId: string }) => wrenchId,
} as const;

const CALIBRATION: LogKind<Calibration> = {
  table: 'whole_calibrations',
  what: 'calibration',
  schema: calibrationSchema,
  owner: OF_WRENCH,
  atOf: ({ asFound }) => asFound.at,
};

const CHECK: LogKind<BeforeUseCheck> = {
  table: 'checks',
  what: 'check',
  schema: beforeUseCheckSchema,
  owner: OF_WRENCH,
  atOf: ({ at }) => at,
};

const RECALL: LogKind<Recall> = {
  table: 'recalls',
  what: 'recall',
  schema: recallSchema,
  owner: OF_WRENCH,
  atOf: ({ raisedAt }) => raisedAt,
};

const RECHECK: LogKind<Recheck> = {
  table: 'rechecks',
  what: 're-check',
  schema: recheckSchema,
  owner: { table: 'recalls', what: 'recall', idOf: ({ recallId }) => recallId },
  atOf: ({ at }) => at,
};

export function careOn(engine: Engine): Care {
  const calibrations = logOn(engine, CALIBRATION);
  return {
    calibrations: {
      get: (id) => calibrations.get(id),
      list: (wrenchId) => calibrations.list(wrenchId),
      append: (calibration, summary) =>
        transact(engine, async (trx) => {
          const appended = await appendTo(trx, CALIBRATION, calibration);
          return appended.ok ? calibrate(trx, calibration.wrenchId, summary) : appended;
        }),
    },
    checks: logOn(engine, CHECK),
    recalls: logOn(engine, RECALL),
    rechecks: logOn(engine, RECHECK),
  };
}
