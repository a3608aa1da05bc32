import type { TorqueUnit } from '@clampwright/core/quantity';
import type { JobState, Pull } from '@clampwright/core/record';
import { useQuery } from '@tanstack/react-query';
import { lazy, Suspense } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../parts/button.tsx';
import { Dialog, DialogActions } from '../parts/dialog.tsx';
import { Notice } from '../parts/notice.tsx';
import { Loading, useTroubleWords } from '../parts/states.tsx';
import { earlierTracesQuery, traceQuery } from './trace-query.ts';

const TraceView = lazy(() => import('./trace-view.tsx'));

interface TraceDialogProps {
  readonly state: JobState;
  readonly seq: number;
  readonly pull: Pull;
  readonly unit: TorqueUnit;
  readonly onClose: () => void;
}

/** The curve of one pull, large. */
export default function TraceDialog({ state, seq, pull, unit, onClose }: TraceDialogProps) {
  const { t } = useTranslation();
  const words = useTroubleWords();
  const trace = useQuery(traceQuery(state.sheet.id, seq));
  const earlier = useQuery(earlierTracesQuery(state.sheet.id, seq));
  const trouble = trace.error ?? earlier.error;
  return (
    <Dialog title={t('trace.title', { position: pull.cell.position })} size="wide" onClose={onClose}>
      {trouble ? (
        <Notice kind="alarm" title={words(trouble).title}>
          {words(trouble).detail}
        </Notice>
      ) : null}
      {trace.data && earlier.data ? (
        <Suspense fallback={<Loading />}>
          <TraceView state={state} pull={pull} trace={trace.data} earlier={earlier.data} unit={unit} />
        </Suspense>
      ) : null}
      {!trouble && !(trace.data && earlier.data) ? <Loading /> : null}
      <DialogActions>
        <Button kind="primary" onPress={onClose}>
          {t('trace.close')}
        </Button>
      </DialogActions>
    </Dialog>
  );
}
