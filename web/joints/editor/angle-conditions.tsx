import { isTorqueUnit, unitsOf } from '@clampwright/core/quantity';
import { useTranslation } from 'react-i18next';
import { FormFigure } from '../../forms/fields.tsx';
import { Select } from '../../parts/select.tsx';
import type { StageForm } from '../form/joint-form.ts';

const TORQUE_UNITS = unitsOf('torque').filter(isTorqueUnit);

interface AngleConditionsProps {
  readonly stage: StageForm;
  readonly place: string;
  readonly onChange: (stage: StageForm) => void;
}

/** From which torque the angle counts, and how fast the wrench may be turned. */
export function AngleConditions({ stage, place, onChange }: AngleConditionsProps) {
  const { t } = useTranslation('lead');
  return (
    <div className="field-row">
      <FormFigure
        field={`${place}.angleFromNm`}
        label={t('stage.angle-from')}
        hint={t('stage.angle-from-hint')}
        value={stage.angleFrom}
        onChange={(angleFrom) => onChange({ ...stage, angleFrom })}
      />
      <Select
        size="narrow"
        label={t('stage.angle-from-unit')}
        value={stage.angleFromUnit}
        options={TORQUE_UNITS.map((value) => ({ value, label: value }))}
        onChange={(angleFromUnit) => onChange({ ...stage, angleFromUnit })}
      />
      <FormFigure
        field={`${place}.speedLimitDegPerS`}
        label={t('stage.speed-limit')}
        hint={t('stage.speed-limit-hint')}
        unit="°/s"
        value={stage.speedLimit}
        onChange={(speedLimit) => onChange({ ...stage, speedLimit })}
      />
    </div>
  );
}
