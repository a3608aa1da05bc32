import type { Failure } from '@clampwright/core/failure';
import { sayFailure } from '@clampwright/core/language';
import { wrenchDeviations } from '@clampwright/core/picture';
import { showNumber, showTorque } from '@clampwright/core/quantity';
import type { JudgedRun } from '@clampwright/core/wrench';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { Notice } from '../../parts/notice.tsx';
import { StateWord } from '../../parts/state-word.tsx';
import { PictureFigure } from '../../plots/picture-figure.tsx';

/** What the runs say, direction by direction: each point with deviation and uncertainty, and their picture. */
export function JudgedRuns({ runs }: { readonly runs: readonly JudgedRun[] }) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const percent = (value: number) => `${showNumber(value, language, { decimals: 2 })}\u00a0%`;
  return runs.map(({ direction, evaluated }) => (
    <section key={direction}>
      <h3 className="sheet-subtitle">{t(`care.${direction}`)}</h3>
      <ul className="calibrate-points">
        {evaluated.points.map((point) => (
          <li key={point.targetNm}>
            <span className="calibrate-figure">{showTorque(point.targetNm, 'N·m', language)}</span>
            <span className="calibrate-figure">
              {`${percent(point.meanDeviationPercent)} ±\u00a0${percent(point.expandedUncertaintyPercent)}`}
            </span>
            <StateWord kind={point.conforms ? 'good' : 'bad'}>
              {t(point.conforms ? 'care.conforms' : 'care.not-conforms')}
            </StateWord>
          </li>
        ))}
      </ul>
      {wrenchDeviations(evaluated, { language, units: { torqueNm: 'N·m' } }).map((picture) => (
        <PictureFigure key={picture.title} picture={picture} />
      ))}
    </section>
  ));
}

/** Readings that no result can be worked out from, with the field. */
export function RefusedReadings({ failure }: { readonly failure: Failure }) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  return (
    <Notice kind="alarm" title={t('care.not-evaluated')} isLive>
      <p>{sayFailure(failure, language)}</p>
    </Notice>
  );
}
