import type { Today } from '@clampwright/server/contract';
import { Link } from '@tanstack/react-router';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { showDate } from '../parts/dates.ts';
import { Sheet } from '../parts/sheet.tsx';
import { DueMark } from './due-mark.tsx';

/** Wrenches whose calibration is missing, overdue or soon due. */
export function DueCalibrations({ wrenches }: { readonly wrenches: Today['wrenches'] }) {
  const { t } = useTranslation();
  const language = useLanguage();
  return (
    <Sheet title={t('today.calibrations')} side={<Link to="/wrenches">{t('today.to-wrenches')}</Link>}>
      {wrenches.length === 0 ? <p className="soft">{t('today.no-calibrations')}</p> : null}
      <ul className="due-list">
        {wrenches.map(({ wrench, state }) => (
          <li key={wrench.id} className="due-row">
            <DueMark isPast={state !== 'soon'} />
            <span>
              <strong>{wrench.name}</strong>
              <br />
              <span className="soft">{t('today.serial', { serial: wrench.serial })}</span>
            </span>
            <span className="due-when">
              {wrench.calibration
                ? t(`today.calibration.${state}`, { on: showDate(wrench.calibration.dueOn, language) })
                : t('today.calibration.never')}
            </span>
          </li>
        ))}
      </ul>
    </Sheet>
  );
}
