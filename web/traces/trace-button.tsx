import type { TorqueUnit } from '@clampwright/core/quantity';
import type { Entry, JobState } from '@clampwright/core/record';
import { lazy, Suspense, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../parts/button.tsx';

const TraceDialog = lazy(() => import('./trace-dialog.tsx'));

interface TraceButtonProps {
  readonly state: JobState;
  /** The entry that brought the pull; of anything else nothing is offered. */
  readonly entry: Entry | undefined;
  readonly unit: TorqueUnit;
  /** Where most pulls bring no curve, nothing is said of it. */
  readonly isSilent?: boolean;
}

/** Leads to the curve of a pull; says so in words where a pull has none. */
export function TraceButton({ state, entry, unit, isSilent = false }: TraceButtonProps) {
  const { t } = useTranslation();
  const [isOpen, setOpen] = useState(false);
  if (entry?.body.kind !== 'pull') return null;
  const { pull } = entry.body;
  if (!pull.trace) return isSilent ? null : <span className="soft small">{t('trace.none')}</span>;
  return (
    <>
      <Button kind="quiet" onPress={() => setOpen(true)} label={t('trace.title', { position: pull.cell.position })}>
        {t('trace.show')}
      </Button>
      {isOpen ? (
        <Suspense>
          <TraceDialog state={state} seq={entry.seq} pull={pull} unit={unit} onClose={() => setOpen(false)} />
        </Suspense>
      ) : null}
    </>
  );
}
