import type { JobJoint } from '@clampwright/core/record';
import type { ImportResult } from '@clampwright/server/contract';
import { useTranslation } from 'react-i18next';
import { Button } from '../parts/button.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { PreviewTable } from './preview-table.tsx';
import { RefusedLines } from './refused-lines.tsx';

interface OutcomeSheetProps {
  readonly joints: readonly JobJoint[];
  readonly preview: ImportResult | undefined;
  readonly isBusy: boolean;
  /** Undefined while the mapping is not complete. */
  readonly onPreview: (() => void) | undefined;
  readonly onTake: (mode: 'all-or-nothing' | 'good-lines') => void;
}

/** What reading the file would do, and the choice what is taken. */
export function OutcomeSheet({ joints, preview, isBusy, onPreview, onTake }: OutcomeSheetProps) {
  const { t } = useTranslation('lead');
  if (!preview) {
    return (
      <Button kind="primary" isDisabled={isBusy || !onPreview} onPress={() => onPreview?.()}>
        {t('import.preview')}
      </Button>
    );
  }
  return (
    <Sheet title={t('import.outcome')}>
      <dl className="counts">
        <Count label={t('import.count-pulls')} value={preview.pulls} />
        <Count label={t('import.count-refused')} value={preview.refusedCount} />
        <Count label={t('import.count-already')} value={preview.already} />
      </dl>
      <PreviewTable joints={joints} result={preview} />
      {preview.refusedCount > 0 ? <RefusedLines result={preview} /> : null}
      <TakeButtons preview={preview} isBusy={isBusy} onTake={onTake} />
    </Sheet>
  );
}

const Count = ({ label, value }: { readonly label: string; readonly value: number }) => (
  <div>
    <dt>{label}</dt>
    <dd>{value}</dd>
  </div>
);

type TakeButtonsProps = Required<Pick<OutcomeSheetProps, 'isBusy' | 'onTake'>> & { readonly preview: ImportResult };

function TakeButtons({ preview, isBusy, onTake }: TakeButtonsProps) {
  const { t } = useTranslation('lead');
  const { added: fresh } = preview;
  if (fresh === 0) return <p>{t('import.nothing-new')}</p>;
  if (preview.refusedCount === 0) {
    return (
      <Button kind="primary" isDisabled={isBusy} onPress={() => onTake('all-or-nothing')}>
        {t('import.take-all', { count: fresh })}
      </Button>
    );
  }
  return (
    <>
      <p>{t('import.choose')}</p>
      <div className="actions">
        <Button kind="primary" isDisabled={isBusy} onPress={() => onTake('good-lines')}>
          {t('import.take-good', { count: fresh })}
        </Button>
        <Button isDisabled={isBusy} onPress={() => onTake('all-or-nothing')}>
          {t('import.take-nothing')}
        </Button>
      </div>
    </>
  );
}
