import { useTranslation } from 'react-i18next';
import type { Field } from './fields.ts';
import { needOf } from './need.ts';
import { useBenchWords } from './words.ts';

interface NeedWordsProps {
  readonly fields: readonly Field[];
  readonly decides?: string | undefined;
  readonly id?: string;
}

/** Says once, before the fields, which are needed or which may be left empty. */
export function NeedWords({ fields, decides, id }: NeedWordsProps) {
  const { t } = useTranslation('lead');
  const words = useBenchWords();
  const need = needOf(fields, decides);
  if (!need) return null;
  return (
    <p id={id} className="bench-need">
      {t(`bench.${need.kind}`, { names: need.names.map(words.field).join('; ') })}
    </p>
  );
}
