import type { OwnRow } from '@clampwright/core/fastener';
import { sayBolt } from '@clampwright/core/language';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { useFaults } from '../../forms/faults.tsx';
import { FormText } from '../../forms/fields.tsx';
import { Select } from '../../parts/select.tsx';
import type { JointForm } from '../form/joint-form.ts';
import { boltChoices, isSuperseded, materialChoices } from '../own-rows/own-choices.ts';

interface OwnFieldsProps {
  readonly fastener: JointForm['fastener'];
  readonly rows: readonly OwnRow[];
  readonly onChange: (part: Partial<JointForm['fastener']>) => void;
}

const FROM_TABLES = 'tables';

/** The thread by its designation or, where the workshop has some, a bolt of its own. */
export function BoltFields({ fastener: { thread, ownBolt }, rows, onChange }: OwnFieldsProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const faults = useFaults();
  const bolts = boltChoices(rows, ownBolt);
  const figures = ownBolt && sayBolt(ownBolt, language);
  const hint = ownBolt && isSuperseded(rows, ownBolt) ? `${figures}. ${t('own.chosen-superseded')}` : figures;
  const choose = (value: string) => {
    const chosen = bolts.find(({ id }) => id === value);
    onChange({ ownBolt: chosen, thread: chosen?.name ?? '' });
  };
  return (
    <>
      {bolts.length > 0 ? (
        <Select
          label={t('joint.bolt')}
          value={ownBolt?.id ?? FROM_TABLES}
          hint={hint}
          problem={ownBolt ? faults.problem('fastener.thread') : undefined}
          options={[
            { value: FROM_TABLES, label: t('joint.by-designation') },
            ...bolts.map(({ id, name }) => ({ value: id, label: t('derive.own', { name }) })),
          ]}
          onChange={choose}
        />
      ) : null}
      {ownBolt ? null : (
        <FormText
          field="fastener.thread"
          label={t('joint.thread')}
          hint={t('joint.thread-hint')}
          value={thread}
          onChange={(typed) => onChange({ thread: typed })}
        />
      )}
    </>
  );
}

/** The strength by its class or, where the workshop has some, a material of its own. */
export function StrengthFields({ fastener: { propertyClass, ownMaterial }, rows, onChange }: OwnFieldsProps) {
  const { t } = useTranslation('lead');
  const materials = materialChoices(rows, ownMaterial);
  const choose = (value: string) =>
    onChange({ ownMaterial: materials.find(({ id }) => id === value), propertyClass: '' });
  return (
    <>
      {materials.length > 0 ? (
        <Select
          label={t('derive.strength')}
          value={ownMaterial?.id ?? FROM_TABLES}
          hint={ownMaterial && isSuperseded(rows, ownMaterial) ? t('own.chosen-superseded') : undefined}
          options={[
            { value: FROM_TABLES, label: t('derive.strength-class') },
            ...materials.map(({ id, name }) => ({ value: id, label: t('derive.own', { name }) })),
          ]}
          onChange={choose}
        />
      ) : null}
      {ownMaterial ? null : (
        <FormText
          field="fastener.propertyClass"
          label={t('joint.class')}
          hint={t('joint.class-hint')}
          value={propertyClass}
          onChange={(typed) => onChange({ propertyClass: typed })}
        />
      )}
    </>
  );
}
