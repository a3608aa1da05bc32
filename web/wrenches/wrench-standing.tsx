import { showNumber, showTorque } from '@clampwright/core/quantity';
import { pullsBetween } from '@clampwright/core/wrench';
import type { WrenchCare } from '@clampwright/server/contract';
import { Link } from '@tanstack/react-router';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Button, buttonClass } from '../parts/button.tsx';
import { showDate } from '../parts/dates.ts';
import { Ledger, LedgerRow } from '../parts/ledger.tsx';
import { useNow } from '../parts/now.ts';
import { keptSession } from './calibrate/kept-session.ts';
import { CalibrationWord } from './calibration-word.tsx';

interface WrenchStandingProps {
  readonly care: WrenchCare;
  readonly mayCalibrate: boolean;
  readonly onWhereabouts: () => void;
  readonly onPaper: (() => void) | undefined;
}

/** What the wrench is, where it stands in its calibration and where it is; the ways on. */
export function WrenchStanding({ care, mayCalibrate, onWhereabouts, onPaper }: WrenchStandingProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const { wrench, pullsSince } = care;
  const { calibration } = wrench;
  const today = useNow().toISOString();
  const torque = (torqueNm: number) => showTorque(torqueNm, 'N·m', language);
  const count = (pulls: number) => showNumber(pulls, language);
  const isBegun = keptSession(wrench.id) !== undefined;
  return (
    <div className="wrench-standing">
      <Ledger label={wrench.name}>
        <LedgerRow
          title={<CalibrationWord wrench={wrench} today={today} pullsSince={pullsSince} />}
          facts={[
            ...(calibration ? [t('care.reference-due', { on: showDate(calibration.dueOn, language) })] : []),
            t('care.pulls-since', { count: pullsSince, limit: count(pullsBetween(wrench)) }),
            t('care.interval-why'),
          ]}
          side={
            mayCalibrate ? (
              <Link
                to="/wrenches/$wrenchId/calibrate"
                params={{ wrenchId: wrench.id }}
                className={buttonClass('primary')}
              >
                {t(isBegun ? 'care.resume' : 'care.calibrate')}
              </Link>
            ) : null
          }
        />
        <LedgerRow
          title={`${torque(wrench.lowestNm)} – ${torque(wrench.highestNm)}`}
          facts={[
            t('wrenches.type', { type: wrench.type, class: wrench.class }),
            `${t('wrench.resolution')} ${torque(wrench.resolutionNm)}`,
            `${t('wrench.lever')} ${showNumber(wrench.leverMm, language)}\u00a0mm`,
            ...(wrench.driveMm === undefined ? [] : [`□ ${showNumber(wrench.driveMm, language)}\u00a0mm`]),
            t(`wrenches.connection-${wrench.connection.kind}`),
          ]}
          side={onPaper ? <Button onPress={onPaper}>{t('care.from-paper')}</Button> : null}
        />
        <LedgerRow
          title={`${t('care.place')}: ${wrench.place ?? t('care.nobody')}`}
          facts={[`${t('care.held-by')}: ${wrench.heldBy ?? t('care.nobody')}`]}
          side={<Button onPress={onWhereabouts}>{t('care.whereabouts')}</Button>}
        />
      </Ledger>
      <p>
        <a className="link-alone" href={`/api/v1/labels.pdf?id=${wrench.id}&language=${language}`} download>
          {t('care.label')}
        </a>
      </p>
    </div>
  );
}
