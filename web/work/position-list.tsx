import { sayNeed, sayVerdict } from '@clampwright/core/language';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import type { PlaceInWork } from '../jobs/place-in-work.ts';
import { VerdictSign } from '../parts/verdict-badge.tsx';

interface PositionListProps {
  readonly place: PlaceInWork;
  /** The position in hand. */
  readonly position: number | undefined;
  readonly onPick: (position: number) => void;
}

/** The positions of the round in the order of the work; a touch picks one. */
export function PositionList({ place, position, onPick }: PositionListProps) {
  const { t } = useTranslation();
  const language = useLanguage();
  return (
    <section aria-labelledby="order-title">
      <h2 id="order-title" className="sheet-subtitle">
        {t('order.title')}
      </h2>
      <ol className="position-list">
        {place.step.order.map((each) => {
          const cell = place.cells[each - 1];
          if (!cell) return null;
          const verdict = cell.verdict ? sayVerdict(cell.verdict, language) : '';
          const state = cell.need === 'nothing' ? verdict : sayNeed(cell.need, language);
          return (
            <li key={each}>
              <button
                type="button"
                className="position-button"
                aria-pressed={each === position}
                aria-label={t('order.position', { position: each, state })}
                onClick={() => onPick(each)}
              >
                <span className="position-number">{each}</span>
                {cell.verdict ? <VerdictSign verdict={cell.verdict} /> : null}
              </button>
            </li>
          );
        })}
      </ol>
    </section>
  );
}
