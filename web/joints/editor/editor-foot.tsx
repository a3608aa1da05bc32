import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../../parts/button.tsx';
import { ConfirmDialog } from '../../parts/confirm-dialog.tsx';
import { JointWarnings } from '../../parts/joint-warnings.tsx';
import { StateWord } from '../../parts/state-word.tsx';
import type { JointReading } from '../form/read.ts';
import { MendList } from './mend-list.tsx';

interface EditorFootProps {
  readonly reading: JointReading;
  readonly isDirty: boolean;
  /** There is something that is not released yet. */
  readonly canRelease: boolean;
  readonly isBusy: boolean;
  /** Every fault is wanted, also of fields nobody has been in. */
  readonly onAsk: () => void;
  readonly onSave: () => void;
  readonly onRelease: () => void;
}

/** What is left to mend, and the two ways on: keep the draft, release it. */
export function EditorFoot({ reading, isDirty, canRelease, isBusy, onAsk, onSave, onRelease }: EditorFootProps) {
  const { t } = useTranslation('lead');
  const [isListed, setListed] = useState(false);
  const [isReleasing, setReleasing] = useState(false);
  const count = reading.faults.length;
  const list = () => {
    onAsk();
    setListed(true);
  };
  return (
    <>
      {isListed && count > 0 ? <MendList faults={reading.faults} onClose={() => setListed(false)} /> : null}
      <div className="foot">
        <div className="foot-state">
          {count > 0 ? (
            <Button kind="quiet" onPress={list}>
              {t('editor.to-mend', { count })}
            </Button>
          ) : (
            <StateWord kind="good">{t('editor.whole')}</StateWord>
          )}
          <span className="soft">
            {isDirty ? t('editor.unsaved') : null}
            {!isDirty && canRelease ? t('editor.saved') : null}
          </span>
        </div>
        <div className="actions">
          <Button isDisabled={isBusy || !isDirty} onPress={reading.content ? onSave : list}>
            {t('editor.save')}
          </Button>
          <Button
            kind="primary"
            isDisabled={isBusy || !canRelease}
            onPress={count > 0 ? list : () => setReleasing(true)}
          >
            {t('editor.release')}
          </Button>
        </div>
      </div>
      {isReleasing ? (
        <ConfirmDialog
          title={t('editor.release-title')}
          action={t('editor.release')}
          isBusy={isBusy}
          onClose={() => setReleasing(false)}
          onConfirm={() => {
            setReleasing(false);
            onRelease();
          }}
        >
          <p>{t('editor.release-text')}</p>
          {reading.fastener ? <JointWarnings warnings={reading.warnings} fastener={reading.fastener} /> : null}
        </ConfirmDialog>
      ) : null}
    </>
  );
}
