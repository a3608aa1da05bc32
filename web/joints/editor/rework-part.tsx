import { say } from '@clampwright/core/language';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { FormFigure, FormText } from '../../forms/fields.tsx';
import { Select } from '../../parts/select.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import { Tick } from '../../parts/tick.tsx';
import type { JointPartProps } from './proof-part.tsx';

const RULES = ['loosen-and-repeat', 'replace-fastener', 'ask-lead'] as const;
const RETORQUE_UNITS = ['km', 'h', 'd'] as const;

/** What is done with a pull that is not within. */
export function ReworkPart({ form, onChange }: JointPartProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const { rework } = form;
  return (
    <Sheet title={t('joint.rework')} anchor="rework">
      <div className="field-row">
        <Select
          label={t('joint.rework-rule')}
          value={rework.rule}
          options={RULES.map((value) => ({ value, label: say(language, `rework.${value}`) }))}
          onChange={(rule) => onChange({ rework: { ...rework, rule } })}
        />
        <FormFigure
          field="rework.maximumAttempts"
          label={t('joint.rework-attempts')}
          hint={t('joint.rework-attempts-hint')}
          value={rework.maximumAttempts}
          onChange={(maximumAttempts) => onChange({ rework: { ...rework, maximumAttempts } })}
        />
      </div>
      <Tick
        isChosen={rework.underContinues}
        onChange={(underContinues) => onChange({ rework: { ...rework, underContinues } })}
      >
        {t('joint.rework-under')}
      </Tick>
    </Sheet>
  );
}

/** When the joint wants to be tightened again. */
export function RetorquePart({ form, onChange }: JointPartProps) {
  const { t } = useTranslation('lead');
  const { retorque } = form;
  const set = (part: Partial<typeof retorque>) => onChange({ retorque: { ...retorque, ...part } });
  return (
    <Sheet title={t('joint.retorque')} anchor="retorque">
      <Tick isChosen={retorque.used} onChange={(used) => set({ used })}>
        {t('joint.retorque-used')}
      </Tick>
      {retorque.used ? (
        <div className="field-row">
          <FormFigure
            field="retorque.after"
            label={t('joint.retorque-after')}
            value={retorque.after}
            onChange={(after) => set({ after })}
          />
          <Select
            size="narrow"
            label={t('joint.retorque-unit')}
            value={retorque.unit}
            options={RETORQUE_UNITS.map((value) => ({ value, label: t(`joint.retorque-unit-${value}`) }))}
            onChange={(unit) => set({ unit })}
          />
          <FormText
            field="retorque.note"
            label={t('joint.retorque-note')}
            value={retorque.note}
            onChange={(note) => set({ note })}
          />
        </div>
      ) : null}
    </Sheet>
  );
}
