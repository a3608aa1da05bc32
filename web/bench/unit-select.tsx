import type { Unit } from '@clampwright/core/quantity';
import { useTranslation } from 'react-i18next';
import { changeableUnit, unitChoices, unitInName } from './unit-in-name.ts';

interface UnitSelectProps {
  /** Field whose name tells the unit. */
  readonly name: string;
  /** What the field is called on screen. */
  readonly label: string;
  readonly unit: Unit | undefined;
  readonly onChange: (unit: Unit) => void;
}

/** Stands behind a figure: its unit, and the others that it may be shown and typed in. */
export function UnitSelect({ name, label, unit, onChange }: UnitSelectProps) {
  const { t } = useTranslation('lead');
  const choices = unitChoices(name);
  if (choices.length < 2) return unitInName(name);
  return (
    <select
      className="unit-select"
      aria-label={t('bench.unit-of', { name: label })}
      value={unit ?? changeableUnit(name)}
      onChange={(event) => {
        const chosen = choices.find((choice) => choice === event.target.value);
        if (chosen) onChange(chosen);
      }}
    >
      {choices.map((choice) => (
        <option key={choice} value={choice}>
          {choice === 'deg' ? '°' : choice}
        </option>
      ))}
    </select>
  );
}
