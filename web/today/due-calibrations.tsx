import { type Language } from '@clampwright/core/quantity';
import { dueState } from '@clampwright/core/wrench';
import type { Today } from '@clampwright/server/contract';
import { Link } from '@tanstack/react-router';
import type { TFunction } from 'i18next';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { showDate } from '../parts/dates.ts';
import { useNow } from '../parts/now.ts';
import { Sheet } from '../parts/sheet.tsx';
import { DueMark } from './due-mark.tsx';

type DueWrench = Today['wrenches'][number];

/** Wrenches and reference standards whose calibration is missing, overdue or soon due; with the days as a calendar. */
export function DueCalibrations({ wrenches, references }: Pick<Today, 'wrenches' | 'references'>) {
  const { t } = useTranslation();
  const language = useLanguage();
  const today = useNow().toISOString().slice(0, 10);
  const isNone = wrenches.length + references.length === 0;
  return (
    <Sheet title={t('today.calibrations')} side={<Link to="/wrenches">{t('today.to-wrenches')}</Link>}>
      {isNone ? <p className="soft">{t('today.no-calibrations')}</p> : null}
      <ul className="due-list">
        {wrenches.map((due) => (
          <li key={due.wrench.id} className="due-row">
            <DueMark isPast={due.state !== 'soon'} />
            <span>
              <Link to="/wrenches/$wrenchId" params={{ wrenchId: due.wrench.id }}>
                <strong>{due.wrench.name}</strong>
              </Link>
              <br />
              <span className="soft">{t('today.serial', { serial: due.wrench.serial })}</span>
            </span>
            <span className="due-when">{whenDue(due, today, t, language)}</span>
          </li>
        ))}
        {references.map(({ reference, state }) => (
          <li key={reference.id} className="due-row">
            <DueMark isPast={state !== 'soon'} />
            <span>
              <Link to="/wrenches/references">
                <strong>{reference.name}</strong>
              </Link>
              <br />
              <span className="soft">{t('today.reference', { serial: reference.serial })}</span>
            </span>
            <span className="due-when">
              {t(`today.calibration.${state}`, { on: showDate(reference.dueOn, language) })}
            </span>
          </li>
        ))}
      </ul>
      <p className="due-files">
        <a className="link-alone" href={`/api/v1/due.ics?language=${language}`} download>
          {t('today.calendar')}
        </a>
        <a className="link-alone" href={`/api/v1/labels.pdf?language=${language}`} download>
          {t('today.labels')}
        </a>
      </p>
    </Sheet>
  );
}

/** By the calendar; or by its pulls, where the calendar would let it go on. */
function whenDue(
  { wrench: { calibration }, state }: DueWrench,
  today: string,
  t: TFunction,
  language: Language,
): string {
  if (!calibration) return t('today.calibration.never');
  const on = showDate(state === 'off' ? calibration.calibratedOn : calibration.dueOn, language);
  const isByPulls = state !== 'off' && dueState(calibration.dueOn, today) !== state;
  return isByPulls ? t('today.calibration.pulls') : t(`today.calibration.${state}`, { on });
}
