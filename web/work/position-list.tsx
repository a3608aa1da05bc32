import { useTranslation } from 'react-i18next';
import type { PlaceInWork } from '../jobs/place-in-work.ts';
import { VerdictSign } from '../parts/verdict-badge.tsx';
import { useCellWords } from './use-cell-words.ts';

interface PositionListProps {
  readonly place: PlaceInWork;
  /** The position in hand. */
  readonly position: number | undefined;
  readonly onPick: (position: number) => void;
}

/** The positions of the round in the order of the work; a touch picks one. */
export function PositionList({ place, position, onPick }: PositionListProps) {
  const { t } = useTranslation();
  const words = useCellWords();
  return (
    <section aria-labelledby="order-title">
      <h2 id="order-title" className="sheet-subtitle">
        {t('order.title')}
      </h2>
      <ol className="position-list">
        {place.step.order.map((each) => {
          const cell = place.cells[each - 1];
          if (!cell) return null;
          const sign = cell.acceptedBy ? 'accepted' : cell.verdict;
          return (
            <li key={each}>
              <button
                type="button"
                className="position-button"
                aria-pressed={each === position}
                aria-label={t('order.position', { position: each, state: words(cell) })}
                onClick={() => onPick(each)}
              >
                <span className="position-number">{each}</span>
                {sign ? <VerdictSign verdict={sign} /> : null}
              </button>
            </li>
          );
        })}
      </ol>
    </section>
  );
}
