import { showShare } from '@clampwright/core/quantity';
import { useTranslation } from 'react-i18next';
import { z } from 'zod';
import { useLanguage } from '../app/language.ts';
import { Sheet } from '../parts/sheet.tsx';
import { StateWord } from '../parts/state-word.tsx';
import { shownFigure } from './shown-figure.ts';
import { TableFrame } from './table-frame.tsx';
import { toShown, type Units, unitOf } from './units.ts';
import { useBenchWords } from './words.ts';

const scatter = {
  standardUncertaintyN: z.number(),
  interval95N: z.tuple([z.number(), z.number()]),
  probabilityBelowN: z.number().optional(),
  probabilityAboveN: z.number().optional(),
};

const bothSchema = z.object({
  propagation: z.object({ preloadN: z.number(), ...scatter }),
  monteCarlo: z.object({ draws: z.number(), meanN: z.number(), ...scatter }).optional(),
  agreement: z.object({ agree: z.boolean(), toleranceN: z.number() }).optional(),
});
type Both = z.infer<typeof bothSchema>;
type Scatter = Omit<Both['propagation'], 'preloadN'>;

interface BothWaysProps {
  readonly output: unknown;
  readonly units: Units;
  /** All draws are not yet made. */
  readonly isRough: boolean;
}

/** The law of propagation and the draws side by side, and whether they agree. */
export function BothWays({ output, units, isRough }: BothWaysProps) {
  const { t } = useTranslation('lead');
  const words = useBenchWords();
  const language = useLanguage();
  const read = bothSchema.safeParse(output);
  if (!read.success || !read.data.monteCarlo) return null;
  const { propagation, monteCarlo, agreement } = read.data;
  const force = (valueN: number) => shownFigure(toShown(valueN, 'preloadN', units), language);
  const share = (value: number | undefined) => (value === undefined ? '–' : showShare(value, language));
  const row = (name: string, cell: (way: Scatter) => string) =>
    [words.field(name), cell(propagation), cell(monteCarlo)] as const;
  const rows = [
    [words.field('preloadN'), force(propagation.preloadN), force(monteCarlo.meanN)] as const,
    row('standardUncertaintyN', (way) => force(way.standardUncertaintyN)),
    row('interval95N', ({ interval95N: [low, high] }) => `${force(low)} – ${force(high)}`),
    row('probabilityBelowN', (way) => share(way.probabilityBelowN)),
    row('probabilityAboveN', (way) => share(way.probabilityAboveN)),
  ];
  return (
    <Sheet title={t('bench.both-ways')}>
      <TableFrame label={t('bench.both-ways')}>
        <table className="table">
          <thead>
            <tr>
              <th scope="col">{unitOf('preloadN', units)}</th>
              <th scope="col">{t('bench.value.propagation')}</th>
              <th scope="col">{t('bench.drawn', { draws: shownFigure(monteCarlo.draws, language) })}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(([name, propagated, drawn]) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                <td className="number">{propagated}</td>
                <td className="number">{drawn}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </TableFrame>
      <p>
        {isRough || !agreement ? (
          <StateWord kind="open">{t('bench.still-drawing')}</StateWord>
        ) : (
          <StateWord kind={agreement.agree ? 'good' : 'soon'}>
            {t(agreement.agree ? 'bench.ways-agree' : 'bench.ways-differ')}
          </StateWord>
        )}
      </p>
    </Sheet>
  );
}
