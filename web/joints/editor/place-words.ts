import { useTranslation } from 'react-i18next';
import { partOf } from './places.ts';

/** Says where in the joint a field is: `Stage 2, round 1`. */
export function usePlaceWords(): (field: string) => string {
  const { t } = useTranslation('lead');
  return (field) => {
    const [, stage, round] = /^stages\[(\d+)\](?:\.rounds\[(\d+)\])?/.exec(field) ?? [];
    if (stage !== undefined && round !== undefined) {
      return t('where.round', { stage: Number(stage) + 1, round: Number(round) + 1 });
    }
    if (stage !== undefined) return t('where.stage', { stage: Number(stage) + 1 });
    const part = partOf(field);
    return part ? t(`where.${part}`) : t('where.joint');
  };
}
