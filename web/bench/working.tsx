import { sayCitation } from '@clampwright/core/language';
import { formulaIn } from '@clampwright/core/quantity';
import { useTranslation } from 'react-i18next';
import { z } from 'zod';
import { useLanguage } from '../app/language.ts';
import { Sheet } from '../parts/sheet.tsx';
import { shownFigure } from './shown-figure.ts';
import { useBenchWords } from './words.ts';

const stepsSchema = z.object({
  steps: z
    .array(
      z.object({
        symbol: z.string(),
        formula: z.string(),
        withNumbers: z.string(),
        value: z.number(),
        unit: z.string(),
        source: z.string(),
      }),
    )
    .min(1),
});

/** Each formula, the same with the numbers put in, and where it stands: to be checked by hand. */
export function Working({ output }: { readonly output: unknown }) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const words = useBenchWords();
  // Letters are the same in every language; the check that a margin stands for is not.
  const sayOf = (symbol: string) => symbol.split(' ').map(words.value).join(' ');
  const read = stepsSchema.safeParse(output);
  if (!read.success) return null;
  return (
    <Sheet title={t('bench.working')}>
      <ol className="working-out">
        {read.data.steps.map(({ symbol, formula, withNumbers, value, unit, source }, index) => (
          <li key={`${symbol}-${index}`}>
            <p className="working-formula">
              {sayOf(symbol)} = {formulaIn(formula, language)}
            </p>
            <p className="working-numbers">= {formulaIn(withNumbers, language)}</p>
            <p className="working-value">
              = {shownFigure(value, language)} {unit}
            </p>
            <p className="working-source">{sayCitation(source, language)}</p>
          </li>
        ))}
      </ol>
    </Sheet>
  );
}
