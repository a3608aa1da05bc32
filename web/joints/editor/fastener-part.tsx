import { say } from '@clampwright/core/language';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { FormText } from '../../forms/fields.tsx';
import { Select } from '../../parts/select.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import type { JointForm } from '../form/joint-form.ts';

const REUSE = ['reusable', 'new-each-time'] as const;

interface FastenerPartProps {
  readonly fastener: JointForm['fastener'];
  readonly onChange: (fastener: JointForm['fastener']) => void;
}

/** What holds the joint. */
export function FastenerPart({ fastener, onChange }: FastenerPartProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const set = (part: Partial<JointForm['fastener']>) => onChange({ ...fastener, ...part });
  return (
    <Sheet title={t('joint.fastener')} anchor="fastener">
      <div className="field-row">
        <FormText
          field="fastener.thread"
          label={t('joint.thread')}
          hint={t('joint.thread-hint')}
          value={fastener.thread}
          onChange={(thread) => set({ thread })}
        />
        <FormText
          field="fastener.propertyClass"
          label={t('joint.class')}
          hint={t('joint.class-hint')}
          value={fastener.propertyClass}
          onChange={(propertyClass) => set({ propertyClass })}
        />
        <FormText
          field="fastener.description"
          label={t('joint.description')}
          hint={t('joint.description-hint')}
          value={fastener.description}
          onChange={(description) => set({ description })}
        />
        <FormText
          field="fastener.lubricant"
          label={t('joint.lubricant')}
          hint={t('joint.lubricant-hint')}
          value={fastener.lubricant}
          onChange={(lubricant) => set({ lubricant })}
        />
        <Select
          label={t('joint.reuse')}
          value={fastener.reuse}
          options={REUSE.map((value) => ({ value, label: say(language, `reuse.${value}`) }))}
          onChange={(reuse) => set({ reuse })}
        />
      </div>
    </Sheet>
  );
}
