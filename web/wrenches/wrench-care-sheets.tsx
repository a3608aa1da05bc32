import type { WrenchCare } from '@clampwright/server/contract';
import { useState } from 'react';
import { usePerson } from '../app/session.ts';
import { CalibrationDialog } from './calibration-dialog.tsx';
import { CheckDialog } from './check-dialog.tsx';
import { ChecksSheet } from './checks-sheet.tsx';
import { DeviationHistory } from './history/deviation-history.tsx';
import { IntervalSheet } from './interval/interval-sheet.tsx';
import { KeptCalibrations } from './kept-calibrations.tsx';
import { mayKeep } from './may-keep.ts';
import { WhereaboutsDialog } from './whereabouts-dialog.tsx';
import { WrenchStanding } from './wrench-standing.tsx';

type Open = 'check' | 'whereabouts' | 'paper' | undefined;

/** The sheets of a wrench's page and the dialogs that belong to them. */
export function WrenchCareSheets({ care }: { readonly care: WrenchCare }) {
  const [open, setOpen] = useState<Open>();
  const may = mayKeep(usePerson());
  const close = () => setOpen(undefined);
  return (
    <>
      <WrenchStanding
        care={care}
        onWhereabouts={() => setOpen('whereabouts')}
        onPaper={may.calibrate ? () => setOpen('paper') : undefined}
        mayCalibrate={may.calibrate}
      />
      <DeviationHistory care={care} />
      <IntervalSheet care={care} />
      <ChecksSheet care={care} onAdd={() => setOpen('check')} />
      <KeptCalibrations care={care} mayRecall={may.register} />
      {open === 'check' ? <CheckDialog wrench={care.wrench} onClose={close} /> : null}
      {open === 'whereabouts' ? <WhereaboutsDialog wrench={care.wrench} onClose={close} /> : null}
      {open === 'paper' ? <CalibrationDialog wrench={care.wrench} onClose={close} /> : null}
    </>
  );
}
