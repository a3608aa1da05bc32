import { useTranslation } from 'react-i18next';
import { z } from 'zod';
import { Notice } from '../parts/notice.tsx';
import { useBenchWords } from './words.ts';

const warningsSchema = z.object({ warnings: z.array(z.object({ field: z.string(), message: z.string() })).min(1) });

/** What is doubtful in the input, by field; the sentences are the registry's own. */
export function Warnings({ output }: { readonly output: unknown }) {
  const { t } = useTranslation('lead');
  const words = useBenchWords();
  const read = warningsSchema.safeParse(output);
  if (!read.success) return null;
  return (
    <Notice kind="caution" title={t('bench.doubts')}>
      <ul className="caution-list">
        {read.data.warnings.map(({ field, message }) => (
          <li key={`${field} ${message}`}>
            {words.field(field.split(/[.[]/)[0] ?? field)}: <span lang="en">{message}</span>
          </li>
        ))}
      </ul>
    </Notice>
  );
}
