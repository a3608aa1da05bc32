import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Sheet } from '../parts/sheet.tsx';
import { BarList } from '../plots/bar-list.tsx';
import { PlotFigure } from '../plots/plot-figure.tsx';
import { ShareBar } from '../plots/share-bar.tsx';
import { figuresOf } from './figures/figures-of.ts';
import type { Units } from './units.ts';
import { useBenchWords } from './words.ts';

interface ResultFiguresProps {
  readonly input: unknown;
  readonly output: unknown;
  readonly units: Units;
}

/** The result as it is seen; nothing for a calculation that is better read. */
export function ResultFigures({ input, output, units }: ResultFiguresProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const { field, value } = useBenchWords();
  const figures = figuresOf(input, output, {
    language,
    units,
    say: (word) => t(`bench.plot.${word}`),
    field,
    value,
  });
  if (figures.length === 0) return null;
  return (
    <Sheet title={t('bench.figures')}>
      {figures.map((figure) => {
        switch (figure.kind) {
          case 'plot':
            return <PlotFigure key={figure.title} {...figure} />;
          case 'shares':
            return <ShareBar key={figure.title} {...figure} />;
          case 'bars':
            return <BarList key={figure.title} {...figure} />;
        }
      })}
    </Sheet>
  );
}
