import { readNumber, showNumber, type Unit } from '@clampwright/core/quantity';
import { useTranslation } from 'react-i18next';
import { TextField } from '../parts/text-field.tsx';
import type { FigureShape } from './fields.ts';
import type { Hand } from './input.ts';
import { type Slider, sliderOf } from './slider.ts';
import { UnitSelect } from './unit-select.tsx';
import { unitOf } from './units.ts';

export interface FigureFieldProps {
  readonly name: string;
  readonly label: string;
  readonly isRequired: boolean;
  readonly hint: string | undefined;
  readonly problem: string | undefined;
  readonly shape: FigureShape;
  readonly typed: string;
  readonly hand: Hand;
  readonly onChange: (typed: string) => void;
  readonly onUnit: (name: string, unit: Unit) => void;
  readonly onLeave: () => void;
}

/** A figure with its unit, and a slider where its range is bounded. */
export function FigureField({
  name,
  label,
  isRequired,
  shape,
  typed,
  hand,
  onUnit,
  onLeave,
  ...field
}: FigureFieldProps) {
  const slider = sliderOf(name, shape);
  return (
    <div className="figure-field">
      <TextField
        {...field}
        label={label}
        isRequired={isRequired}
        value={typed}
        inputMode="decimal"
        onBlur={onLeave}
        after={
          <UnitSelect
            name={name}
            label={label}
            unit={unitOf(name, hand.units)}
            onChange={(unit) => onUnit(name, unit)}
          />
        }
      />
      {slider ? (
        <FigureSlider
          label={label}
          slider={slider}
          usual={shape.usual}
          typed={typed}
          hand={hand}
          onChange={field.onChange}
        />
      ) : null}
    </div>
  );
}

interface FigureSliderProps {
  readonly label: string;
  readonly slider: Slider;
  readonly usual: number | undefined;
  readonly typed: string;
  readonly hand: Hand;
  readonly onChange: (typed: string) => void;
}

/** Follows the figure and leads it; where nothing is typed it rests at what is then taken. */
function FigureSlider({ label, slider, usual, typed, hand, onChange }: FigureSliderProps) {
  const { t } = useTranslation('lead');
  const read = readNumber(typed, hand.language);
  const value = read.ok ? read.value : (usual ?? (slider.from + slider.to) / 2);
  return (
    <input
      type="range"
      className="figure-slider"
      aria-label={t('bench.slider-of', { name: label })}
      aria-valuetext={showNumber(value, hand.language)}
      data-unset={read.ok ? undefined : ''}
      min={slider.from}
      max={slider.to}
      step={slider.step}
      value={value}
      onChange={(event) => onChange(showNumber(Number(event.target.value), hand.language))}
    />
  );
}
