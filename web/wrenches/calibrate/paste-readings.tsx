import type { CalibrationPlan } from '@clampwright/core/wrench';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { Button } from '../../parts/button.tsx';
import { FileDrop } from '../../parts/file-drop.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { readPasted } from './pasted.ts';
import type { Act } from './session.ts';

interface PasteReadingsProps {
  readonly plan: CalibrationPlan;
  readonly acts: readonly Act[];
  readonly onTake: (...acts: readonly Act[]) => void;
}

/** Many readings at once, from a table or a file; all of them or none. */
export function PasteReadings({ plan, acts, onTake }: PasteReadingsProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const [text, setText] = useState('');
  const [problem, setProblem] = useState<string>();
  const take = () => {
    const pasted = readPasted(text, plan, acts, language);
    if (!pasted.ok) {
      const { line, text: at, fault } = pasted;
      return setProblem(
        fault === 'unreadable' ? t('care.paste-fault', { line, text: at }) : t('care.paste-many', { line }),
      );
    }
    setText('');
    setProblem(undefined);
    return onTake(...pasted.readings);
  };
  return (
    <details className="calibrate-paste">
      <summary>{t('care.paste')}</summary>
      <TextField
        isLong
        label={t('care.paste')}
        hint={t('care.paste-hint')}
        value={text}
        problem={problem}
        onChange={setText}
      />
      <FileDrop
        label={t('care.paste-file')}
        hint=".csv, .txt"
        accept=".csv,.txt,text/csv,text/plain"
        onFile={(file) => void file.text().then(setText)}
      />
      <Button isDisabled={text.trim() === ''} onPress={take}>
        {t('care.paste-take')}
      </Button>
    </details>
  );
}
