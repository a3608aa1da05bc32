import { showNumber } from '@clampwright/core/quantity';
import { careState, type Wrench } from '@clampwright/core/wrench';
import { Link } from '@tanstack/react-router';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Button } from '../parts/button.tsx';
import { showDate } from '../parts/dates.ts';
import { Ledger, LedgerRow } from '../parts/ledger.tsx';
import { useNow } from '../parts/now.ts';
import { EmptyState } from '../parts/states.tsx';
import { CalibrationWord } from './calibration-word.tsx';

interface WrenchListProps {
  readonly wrenches: readonly Wrench[];
  /** Since each was calibrated, by its identity; empty until they are counted. */
  readonly pullsSince: ReadonlyMap<string, number>;
  readonly onCalibrate: ((wrench: Wrench) => void) | undefined;
}

/** The wrenches, those that must not be used first. */
export function WrenchList({ wrenches, pullsSince, onCalibrate }: WrenchListProps) {
  const { t } = useTranslation('lead');
  const today = useNow().toISOString();
  if (wrenches.length === 0) return <EmptyState title={t('wrenches.none')} text={t('wrenches.none-text')} />;
  const rank = (wrench: Wrench) => URGENCY.indexOf(careState(wrench, today, pullsSince.get(wrench.id) ?? 0));
  return (
    <div className="wrench-list">
      <Ledger label={t('wrenches.title')}>
        {wrenches
          .toSorted((a, b) => rank(a) - rank(b) || a.lowestNm - b.lowestNm)
          .map((wrench) => (
            <WrenchRow
              key={wrench.id}
              wrench={wrench}
              today={today}
              pullsSince={pullsSince.get(wrench.id)}
              onCalibrate={onCalibrate}
            />
          ))}
      </Ledger>
    </div>
  );
}

/** An uncertainty is told to two digits at most (JCGM 100:2008, 7.2.6). */
const PERCENT_DIGITS = 2;

const URGENCY = ['off', 'overdue', 'never', 'soon', 'valid'] as const;

interface WrenchRowProps {
  readonly wrench: Wrench;
  readonly today: string;
  readonly pullsSince: number | undefined;
  readonly onCalibrate: ((wrench: Wrench) => void) | undefined;
}

function WrenchRow({ wrench, today, pullsSince, onCalibrate }: WrenchRowProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const { calibration } = wrench;
  const figure = (value: number, digits = 4) => showNumber(Number(value.toPrecision(digits)), language);
  return (
    <LedgerRow
      title={
        <Link to="/wrenches/$wrenchId" params={{ wrenchId: wrench.id }}>
          {wrench.name}
        </Link>
      }
      facts={[
        t('wrenches.range', { lowest: figure(wrench.lowestNm), highest: figure(wrench.highestNm) }),
        t('wrenches.serial', { serial: wrench.serial }),
        t('wrenches.type', { type: wrench.type, class: wrench.class }),
        wrench.angleResolutionDeg === undefined ? t('wrenches.torque-only') : t('wrenches.with-angle'),
        t(`wrenches.connection-${wrench.connection.kind}`),
        ...(calibration
          ? [
              t('wrenches.calibrated', {
                due: showDate(calibration.dueOn, language),
                certificate: calibration.certificate,
                deviation: figure(calibration.maximumDeviationPercent, PERCENT_DIGITS),
                uncertainty: figure(calibration.expandedUncertaintyPercent, PERCENT_DIGITS),
              }),
            ]
          : []),
      ]}
      state={<CalibrationWord wrench={wrench} today={today} pullsSince={pullsSince} />}
      side={
        onCalibrate ? (
          <Button label={t('wrenches.calibrate-named', { name: wrench.name })} onPress={() => onCalibrate(wrench)}>
            {t('wrenches.calibrate')}
          </Button>
        ) : null
      }
    />
  );
}
