import type { Step } from '@clampwright/core/procedure';
import { showAngle } from '@clampwright/core/quantity';
import { type ClosingRound, closingRounds, isUnsettled, type JointState } from '@clampwright/core/record';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Notice } from '../parts/notice.tsx';

interface ClosingStateProps {
  readonly joint: JointState;
  /** The round in hand. */
  readonly step: Step;
}

/** How far the fasteners still turn in the closing rounds, and whether another one is due. */
export function ClosingState({ joint, step }: ClosingStateProps) {
  const { t } = useTranslation();
  const rounds = closingRounds(joint);
  const last = rounds.findLast(({ isPulled }) => isPulled);
  if (!last) return step.closing ? <ClosingWhy stillDeg={step.closing.stillDeg} /> : null;
  if (isUnsettled(joint)) {
    return (
      <Notice kind="alarm" title={t('closing.not-settling')} isLive>
        <p>{t('closing.ask-lead')}</p>
        <ClosingWords round={last} isLast />
      </Notice>
    );
  }
  return (
    <Notice kind={last.isWhole && !last.isStill ? 'caution' : 'plain'} title={t('closing.title')} isLive={last.isWhole}>
      <ClosingWords round={last} />
    </Notice>
  );
}

function ClosingWhy({ stillDeg }: { readonly stillDeg: number }) {
  const { t } = useTranslation();
  const language = useLanguage();
  return <Notice kind="plain" title={t('closing.why', { limit: showAngle(stillDeg, language) })} />;
}

interface ClosingWordsProps {
  readonly round: ClosingRound;
  /** No closing round may follow. */
  readonly isLast?: boolean;
}

function ClosingWords({ round, isLast = false }: ClosingWordsProps) {
  const { t } = useTranslation();
  const language = useLanguage();
  const limit = showAngle(round.stillDeg, language);
  const farthest = farthestOf(round);
  if (round.isStill) return <p>{t('closing.still', { limit })}</p>;
  return (
    <>
      {round.isWhole ? null : <p>{t('closing.why', { limit })}</p>}
      {farthest ? (
        <p>{t('closing.turned', { most: showAngle(farthest.deg, language), position: farthest.position })}</p>
      ) : null}
      {round.moved.length > 0 ? (
        <p>{t(isLast ? 'closing.moved-last' : 'closing.moved', { limit, positions: round.moved.join(', ') })}</p>
      ) : null}
      {round.untold.length > 0 ? <p>{t('closing.untold', { positions: round.untold.join(', ') })}</p> : null}
    </>
  );
}

function farthestOf({ turnedDeg }: ClosingRound): { readonly position: number; readonly deg: number } | undefined {
  const told = turnedDeg.flatMap((deg, index) => (deg === undefined ? [] : [{ position: index + 1, deg }]));
  return told.toSorted((a, b) => b.deg - a.deg)[0];
}
