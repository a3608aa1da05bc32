import { picturesOf } from '@clampwright/core/picture';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Sheet } from '../parts/sheet.tsx';
import { PictureFigure } from '../plots/picture-figure.tsx';
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
  const pictures = picturesOf(input, output, { language, units, field, value });
  if (pictures.length === 0) return null;
  return (
    <Sheet title={t('bench.figures')}>
      {pictures.map((picture) => (
        <PictureFigure key={picture.title} picture={picture} />
      ))}
    </Sheet>
  );
}
