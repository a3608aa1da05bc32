import type { CalibrationPlan, Wrench } from '@clampwright/core/wrench';
import { newIdentity } from '../../work/identity.ts';
import { blankCalibration } from '../form/calibration-form.ts';
import type { CalibrationSession } from './session.ts';

/** What every screen of a calibration works with. */
export interface InSession {
  readonly wrench: Wrench;
  readonly plan: CalibrationPlan;
  readonly session: CalibrationSession;
  readonly onChange: (session: CalibrationSession) => void;
}

/** A calibration that is to begin now. */
export function blankSession(wrenchId: string): CalibrationSession {
  const now = new Date().toISOString();
  return {
    id: newIdentity(),
    wrenchId,
    at: 'set-up',
    setUp: {
      referenceId: '',
      certificate: '',
      place: '',
      temperature: '',
      humidity: '',
      dueOn: blankCalibration(now.slice(0, 10)).dueOn,
      reproducibility: '',
      outputInterface: '',
      driveInterface: '',
      leverVariation: '',
    },
    found: { at: now, acts: [] },
  };
}
