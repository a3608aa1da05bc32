import type { Layout } from '@clampwright/core/layout';
import { useTranslation } from 'react-i18next';
import { nextKey, withoutRow, withRow } from '../../forms/rows.ts';
import { Button } from '../../parts/button.tsx';
import { blankRound } from '../form/blank.ts';
import { type RoundForm } from '../form/joint-form.ts';
import { RoundPart } from './round-part.tsx';

interface RoundsPartProps {
  readonly place: string;
  readonly rounds: readonly RoundForm[];
  readonly layout: Layout | undefined;
  readonly onChange: (rounds: readonly RoundForm[]) => void;
}

/** The passes over all positions, each with its share of the torque and its order. */
export function RoundsPart({ place, rounds, layout, onChange }: RoundsPartProps) {
  const { t } = useTranslation('lead');
  const last = rounds.at(-1);
  const add = () => {
    const key = nextKey(rounds);
    onChange([...rounds, last ? { ...last, key, sharePercent: '100' } : blankRound(key)]);
  };
  return (
    <div className="rounds">
      <h4 className="sheet-subtitle">{t('round.title')}</h4>
      <ol>
        {rounds.map((round, index) => (
          <RoundPart
            key={round.key}
            place={`${place}[${index}]`}
            number={index + 1}
            round={round}
            layout={layout}
            onChange={(changed) => onChange(withRow(rounds, changed))}
            onRemove={rounds.length > 1 ? () => onChange(withoutRow(rounds, round.key)) : undefined}
          />
        ))}
      </ol>
      <Button onPress={add}>{t('round.add')}</Button>
    </div>
  );
}
