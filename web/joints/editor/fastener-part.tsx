import { say } from '@clampwright/core/language';
import { useQuery } from '@tanstack/react-query';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { FormFigure, FormText } from '../../forms/fields.tsx';
import { Select } from '../../parts/select.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import type { JointForm } from '../form/joint-form.ts';
import { ownRowsQuery } from '../own-rows/own-rows.ts';
import { BoltFields, StrengthFields } from './own-fastener-fields.tsx';
import { PrevailingFields } from './prevailing-fields.tsx';

const REUSE = ['reusable', 'new-each-time'] as const;

interface FastenerPartProps {
  readonly fastener: JointForm['fastener'];
  readonly onChange: (fastener: JointForm['fastener']) => void;
}

/** What holds the joint. */
export function FastenerPart({ fastener, onChange }: FastenerPartProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const { data: rows = [] } = useQuery(ownRowsQuery);
  const set = (part: Partial<JointForm['fastener']>) => onChange({ ...fastener, ...part });
  return (
    <Sheet title={t('joint.fastener')} anchor="fastener">
      <div className="field-row">
        <BoltFields fastener={fastener} rows={rows} onChange={set} />
        <StrengthFields fastener={fastener} rows={rows} onChange={set} />
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
        <FormFigure
          field="fastener.stiffnessNPerMm"
          label={t('joint.stiffness')}
          hint={t('joint.stiffness-hint')}
          unit="N/mm"
          size="usual"
          value={fastener.stiffness}
          onChange={(stiffness) => set({ stiffness })}
        />
      </div>
      <PrevailingFields prevailing={fastener.prevailing} onChange={(prevailing) => set({ prevailing })} />
    </Sheet>
  );
}
