import { CONSEQUENCE_CLASSES } from '@clampwright/core/joint';
import { say, sayChance, sayConsequence } from '@clampwright/core/language';
import type { Stage } from '@clampwright/core/procedure';
import { showNumber, showTorque } from '@clampwright/core/quantity';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { FormFigure, FormText } from '../../forms/fields.tsx';
import { readerIn } from '../../forms/reader.ts';
import { Select } from '../../parts/select.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import { KeptDerivation } from '../derive/kept-derivation.tsx';
import type { JointForm } from '../form/joint-form.ts';
import { readDecisionRule } from '../form/read.ts';
import { EXAMPLE_SHARE, ruleExample } from './rule-example.ts';

const SOURCES = ['maker', 'standard', 'trial', 'derived'] as const;
const RULES = ['simple', 'guarded', 'risk'] as const;
const CONSEQUENCES = ['none', ...CONSEQUENCE_CLASSES] as const;

export interface JointPartProps {
  readonly form: JointForm;
  readonly onChange: (part: Partial<JointForm>) => void;
}

interface StagesPartProps extends JointPartProps {
  /** As far as they can be read; undefined while something is wrong. */
  readonly stages: readonly Stage[] | undefined;
}

/** Where the numbers come from. */
export function SourcePart({ form, stages, onChange }: StagesPartProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const { numbersSource } = form;
  return (
    <Sheet title={t('joint.source')} anchor="numbersSource">
      <div className="field-row">
        <Select
          size="wide"
          label={t('joint.source-kind')}
          value={numbersSource.kind}
          options={SOURCES.map((value) => ({ value, label: say(language, `numbers.${value}`) }))}
          onChange={(kind) => onChange({ numbersSource: { ...numbersSource, kind } })}
        />
        <FormText
          isLong
          field="numbersSource.text"
          label={t('joint.source-text')}
          hint={t('joint.source-hint')}
          value={numbersSource.text}
          onChange={(text) => onChange({ numbersSource: { ...numbersSource, text } })}
        />
      </div>
      {numbersSource.kind === 'derived' && numbersSource.derivation ? (
        <KeptDerivation derivation={numbersSource.derivation} stages={stages} torqueUnit={form.torqueUnit} />
      ) : null}
    </Sheet>
  );
}

/** When a pull counts as within. */
export function DecisionPart({ form, stages, onChange }: StagesPartProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const { decisionRule } = form;
  return (
    <Sheet title={t('joint.decision')} anchor="decisionRule">
      <div className="field-row">
        <Select
          label={t('joint.decision-kind')}
          value={decisionRule.kind}
          options={RULES.map((value) => ({ value, label: t(`joint.decision-${value}`) }))}
          onChange={(kind) => onChange({ decisionRule: { ...decisionRule, kind } })}
        />
        {decisionRule.kind === 'guarded' ? (
          <FormFigure
            field="decisionRule.factor"
            label={t('joint.decision-factor')}
            hint={t('joint.decision-factor-hint')}
            value={decisionRule.factor}
            onChange={(factor) => onChange({ decisionRule: { ...decisionRule, factor } })}
          />
        ) : null}
        {decisionRule.kind === 'risk' ? (
          <FormFigure
            field="decisionRule.maximum"
            label={t('joint.decision-maximum')}
            hint={t('joint.decision-maximum-hint')}
            value={decisionRule.maximumPercent}
            onChange={(maximumPercent) => onChange({ decisionRule: { ...decisionRule, maximumPercent } })}
          />
        ) : null}
      </div>
      <p className="soft">{t(`joint.decision-${decisionRule.kind}-about`)}</p>
      <ExampleFigure form={form} stages={stages} />
      <Select
        label={t('joint.consequence')}
        value={form.consequenceClass}
        options={CONSEQUENCES.map((value) => ({
          value,
          label: value === 'none' ? t('joint.consequence-none') : sayConsequence(value, language),
        }))}
        hint={t('joint.consequence-hint')}
        onChange={(consequenceClass) => onChange({ consequenceClass })}
      />
    </Sheet>
  );
}

/** What the rule makes of the joint's own window with a usual wrench, the chance told in words. */
function ExampleFigure({ form, stages }: Pick<StagesPartProps, 'form' | 'stages'>) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const window = stages?.findLast(({ torque }) => torque !== undefined)?.torque;
  const rule = readDecisionRule(form, readerIn(language));
  if (!window || !rule || !(window.lowerNm < window.upperNm)) return null;
  const torque = (torqueNm: number) => showTorque(torqueNm, form.torqueUnit, language);
  const { accepted, chanceAbove } = ruleExample(window, rule);
  const usual = {
    lower: torque(window.lowerNm),
    upper: torque(window.upperNm),
    share: showNumber(EXAMPLE_SHARE * 100, language),
  };
  return (
    <p>
      {accepted
        ? t('joint.decision-example', {
            ...usual,
            from: torque(accepted.lowerNm),
            to: torque(accepted.upperNm),
            chance: sayChance(chanceAbove, language),
          })
        : t('joint.decision-example-none', usual)}
    </p>
  );
}
