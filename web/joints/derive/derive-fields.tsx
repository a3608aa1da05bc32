import { showNumber } from '@clampwright/core/quantity';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { useFaults } from '../../forms/faults.tsx';
import { FormFigure, FormText } from '../../forms/fields.tsx';
import { Select } from '../../parts/select.tsx';
import {
  chosenFriction,
  chosenMethod,
  type DeriveChoices,
  type DeriveForm,
  greatestFactor,
  ownScatterPercent,
} from './derive-form.ts';
import { useDeriveWords } from './derive-words.ts';
import { rangesOf } from './friction-choice.ts';
import { METHODS } from './methods.ts';

interface DeriveFieldsProps {
  readonly form: DeriveForm;
  readonly choices: DeriveChoices;
  readonly onChange: (part: Partial<DeriveForm>) => void;
}

/** What a target is worked out from. */
export const DeriveFields = (props: DeriveFieldsProps) => (
  <>
    <FastenerFields {...props} />
    <FrictionFields {...props} />
    <TighteningFields {...props} />
  </>
);

function FastenerFields({ form, choices, onChange }: DeriveFieldsProps) {
  const { t } = useTranslation('lead');
  const faults = useFaults();
  const ownRow = ({ id, name }: { readonly id: string; readonly name: string }) => ({
    value: id,
    label: t('derive.own', { name }),
  });
  const own = choices.materials.map(ownRow);
  const isOwnBolt = form.bolt !== 'designation';
  return (
    <div className="field-row">
      {choices.bolts.length > 0 ? (
        <Select
          label={t('joint.bolt')}
          value={form.bolt}
          problem={isOwnBolt ? faults.problem('thread') : undefined}
          options={[{ value: 'designation', label: t('joint.by-designation') }, ...choices.bolts.map(ownRow)]}
          onChange={(bolt) => onChange({ bolt })}
        />
      ) : null}
      {isOwnBolt ? null : (
        <FormText
          field="thread"
          label={t('joint.thread')}
          value={form.thread}
          onChange={(thread) => onChange({ thread })}
        />
      )}
      {own.length > 0 ? (
        <Select
          label={t('derive.strength')}
          value={form.strength}
          options={[{ value: 'class', label: t('derive.strength-class') }, ...own]}
          onChange={(strength) => onChange({ strength })}
        />
      ) : null}
      {form.strength === 'class' ? (
        <FormText
          field="propertyClass"
          label={t('joint.class')}
          value={form.propertyClass}
          onChange={(propertyClass) => onChange({ propertyClass })}
        />
      ) : null}
    </div>
  );
}

function FrictionFields({ form, choices, onChange }: DeriveFieldsProps) {
  const { t } = useTranslation('lead');
  const words = useDeriveWords();
  const ranges = rangesOf(chosenFriction(form, choices));
  return (
    <>
      <div className="field-row">
        <Select
          size="wide"
          label={t('derive.friction')}
          hint={
            ranges &&
            t('derive.friction-taken', {
              thread: words.range(ranges.thread.lower, ranges.thread.upper),
              bearing: words.range(ranges.bearing.lower, ranges.bearing.upper),
            })
          }
          value={form.friction}
          options={choices.frictions.map((choice) => ({ value: choice.value, label: words.friction(choice) }))}
          onChange={(friction) => onChange({ friction })}
        />
      </div>
      {ranges ? null : (
        <div className="field-row">
          <FormFigure
            field="threadFriction"
            label={t('derive.thread-friction')}
            hint={t('derive.friction-hint')}
            value={form.threadFriction}
            onChange={(threadFriction) => onChange({ threadFriction })}
          />
          <FormFigure
            field="bearingFriction"
            label={t('derive.bearing-friction')}
            value={form.bearingFriction}
            onChange={(bearingFriction) => onChange({ bearingFriction })}
          />
          <FormText
            field="frictionSource"
            label={t('derive.friction-source')}
            hint={t('derive.friction-source-hint')}
            value={form.frictionSource}
            onChange={(frictionSource) => onChange({ frictionSource })}
          />
        </div>
      )}
    </>
  );
}

function TighteningFields({ form, choices, onChange }: DeriveFieldsProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const words = useDeriveWords();
  const method = chosenMethod(form);
  const chooseMethod = (value: string) => {
    const chosen = METHODS.find((one) => one.value === value);
    onChange({ method: value, ...(chosen ? { tighteningFactor: greatestFactor(chosen, language) } : {}) });
  };
  const wrenches = choices.wrenches.map((wrench) => ({
    value: wrench.id,
    label: t('derive.by-wrench', { name: wrench.name, percent: showNumber(ownScatterPercent(wrench), language) }),
  }));
  return (
    <>
      <div className="field-row">
        <FormFigure
          field="utilization"
          label={t('derive.utilization')}
          unit="%"
          value={form.utilizationPercent}
          onChange={(utilizationPercent) => onChange({ utilizationPercent })}
        />
        <Select
          size="wide"
          label={t('derive.how')}
          value={form.method}
          options={METHODS.map((one) => ({ value: one.value, label: words.method(one) }))}
          onChange={chooseMethod}
        />
        <FormFigure
          field="tighteningFactor"
          label={t('derive.factor')}
          hint={[t('derive.factor-hint'), method && words.guideValues(method)].filter(Boolean).join(' ')}
          value={form.tighteningFactor}
          onChange={(tighteningFactor) => onChange({ tighteningFactor })}
        />
      </div>
      <div className="field-row">
        <Select
          label={t('derive.window-by')}
          value={form.windowBy}
          options={[{ value: 'typed', label: t('derive.by-typed') }, ...wrenches]}
          onChange={(windowBy) => onChange({ windowBy })}
        />
        {form.windowBy === 'typed' ? (
          <FormFigure
            field="plusMinusPercent"
            label={t('window.percent')}
            unit="%"
            value={form.plusMinusPercent}
            onChange={(plusMinusPercent) => onChange({ plusMinusPercent })}
          />
        ) : null}
      </div>
    </>
  );
}
