import { useTranslation } from 'react-i18next';
import { Notice } from '../parts/notice.tsx';
import type { Guess } from './mapping.ts';

const FIELDS = [
  'encoding',
  'delimiter',
  'decimalSign',
  'zone',
  'time',
  'torque',
  'torqueUnit',
  'angle',
  'angleUnit',
  'position',
  'joint',
  'stage',
  'round',
  'wrenchSerial',
  'curveBy',
] as const;

/** What of the proposal somebody has to look at. */
export function DoubtList({ doubts }: { readonly doubts: Guess['doubts'] }) {
  const { t } = useTranslation('lead');
  const fields = FIELDS.filter((field) => doubts.some((doubt) => doubt.field === field));
  if (fields.length === 0) return null;
  return (
    <Notice kind="caution" title={t('import.look')}>
      <ul className="caution-list">
        {fields.map((field) => (
          <li key={field}>{t(`import.doubt.${field}`)}</li>
        ))}
      </ul>
    </Notice>
  );
}
