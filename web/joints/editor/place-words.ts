import { useTranslation } from 'react-i18next';

const PARTS = [
  'name',
  'fastener',
  'layout',
  'stages',
  'numbersSource',
  'cautions',
  'rework',
  'decisionRule',
  'retorque',
  'torqueUnit',
] as const;

/** Says where in the joint a field is: `Stage 2, round 1`. */
export function usePlaceWords(): (field: string) => string {
  const { t } = useTranslation('lead');
  return (field) => {
    const [, stage, round] = /^stages\[(\d+)\](?:\.rounds\[(\d+)\])?/.exec(field) ?? [];
    if (stage !== undefined && round !== undefined) {
      return t('where.round', { stage: Number(stage) + 1, round: Number(round) + 1 });
    }
    if (stage !== undefined) return t('where.stage', { stage: Number(stage) + 1 });
    const part = PARTS.find((name) => field === name || field.startsWith(`${name}.`) || field.startsWith(`${name}[`));
    return part ? t(`where.${part}`) : t('where.joint');
  };
}
