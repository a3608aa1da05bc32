import type { Result } from '@clampwright/core/failure';
import type { ReactNode } from 'react';
import { useTranslation } from 'react-i18next';
import { Sheet } from '../parts/sheet.tsx';
import { isRecord } from './is-record.ts';
import { Outputs, type OutputUnits } from './outputs.tsx';
import { Warnings } from './warnings.tsx';

interface ResultSheetProps extends OutputUnits {
  /** Undefined while an input cannot be read. */
  readonly result: Result<unknown> | undefined;
  readonly children?: ReactNode;
}

/** The result as it stands. */
export function ResultSheet({ result, children, ...units }: ResultSheetProps) {
  const { t } = useTranslation('lead');
  const isThere = result?.ok === true && isRecord(result.value);
  return (
    <Sheet title={t('bench.result')}>
      {isThere ? <Warnings output={result.value} /> : null}
      <div aria-live="polite">
        {isThere ? <Outputs outputs={result.value} {...units} /> : <p className="soft">{t('bench.waits')}</p>}
      </div>
      {isThere ? children : null}
    </Sheet>
  );
}
