import { remarkSchema, sayMechanics, sayRemark } from '@clampwright/core/language';
import { useTranslation } from 'react-i18next';
import { z } from 'zod';
import { useLanguage } from '../app/language.ts';
import { Notice } from '../parts/notice.tsx';
import { useBenchWords } from './words.ts';

const warningsSchema = z.object({ warnings: z.array(remarkSchema.extend({ field: z.string() })).min(1) });

/** What is doubtful in the input, by field. */
export function Warnings({ output }: { readonly output: unknown }) {
  const { t } = useTranslation('lead');
  const words = useBenchWords();
  const language = useLanguage();
  const read = warningsSchema.safeParse(output);
  if (!read.success) return null;
  return (
    <Notice kind="caution" title={t('bench.doubts')}>
      <ul className="caution-list">
        {read.data.warnings.map(({ field, ...remark }) => (
          <li key={`${field} ${remark.code}`}>
            {sayMechanics(language, 'plot.reads', {
              name: words.field(field.split(/[.[]/)[0] ?? field),
              value: sayRemark(remark, language),
            })}
          </li>
        ))}
      </ul>
    </Notice>
  );
}
