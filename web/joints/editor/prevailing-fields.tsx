import { PREVAILING_CAUSES } from '@clampwright/core/joint';
import { isTorqueUnit, unitsOf } from '@clampwright/core/quantity';
import { useTranslation } from 'react-i18next';
import { FormFigure } from '../../forms/fields.tsx';
import { Select } from '../../parts/select.tsx';
import type { PrevailingForm } from '../form/joint-form.ts';

const TORQUE_UNITS = unitsOf('torque').filter(isTorqueUnit);

interface PrevailingFieldsProps {
  readonly prevailing: PrevailingForm;
  readonly onChange: (prevailing: PrevailingForm) => void;
}

/** Torque that a sound fastener takes before it clamps: what curves are not held to account for. */
export function PrevailingFields({ prevailing, onChange }: PrevailingFieldsProps) {
  const { t } = useTranslation('lead');
  const set = (part: Partial<PrevailingForm>) => onChange({ ...prevailing, ...part });
  return (
    <div className="field-row">
      <Select
        label={t('joint.prevailing')}
        hint={t('joint.prevailing-hint')}
        value={prevailing.by}
        options={(['none', ...PREVAILING_CAUSES] as const).map((value) => ({
          value,
          label: t(`joint.prevailing-${value}`),
        }))}
        onChange={(by) => set({ by })}
      />
      {prevailing.by === 'none' ? null : (
        <>
          <FormFigure
            size="usual"
            field="fastener.prevailing.highestNm"
            label={t('joint.prevailing-highest')}
            hint={t('joint.prevailing-highest-hint')}
            value={prevailing.highest}
            onChange={(highest) => set({ highest })}
          />
          <Select
            size="narrow"
            label={t('joint.prevailing-unit')}
            value={prevailing.unit}
            options={TORQUE_UNITS.map((value) => ({ value, label: value }))}
            onChange={(unit) => set({ unit })}
          />
        </>
      )}
    </div>
  );
}
