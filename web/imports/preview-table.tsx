import { showAngle, showTorqueFigure } from '@clampwright/core/quantity';
import type { JobJoint } from '@clampwright/core/record';
import { VERDICTS } from '@clampwright/core/verdict';
import type { ImportResult } from '@clampwright/server/contract';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { showInstant } from '../parts/dates.ts';
import { VerdictBadge } from '../parts/verdict-badge.tsx';

interface PreviewTableProps {
  readonly joints: readonly JobJoint[];
  readonly result: ImportResult;
}

/** The first pulls as they are understood and judged. */
export function PreviewTable({ joints, result }: PreviewTableProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  if (result.preview.length === 0) return null;
  const unitOf = (ref: string) => joints.find((joint) => joint.ref === ref)?.joint.content.torqueUnit ?? 'N·m';
  return (
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- what scrolls must be reachable with the keyboard
    <section className="table-frame" aria-label={t('import.first-pulls')} tabIndex={0}>
      <table className="table">
        <caption className="soft">{t('import.first-pulls')}</caption>
        <thead>
          <tr>
            <th scope="col" className="number">
              {t('import.line')}
            </th>
            <th scope="col">{t('import.where')}</th>
            <th scope="col" className="number">
              {t('import.position')}
            </th>
            <th scope="col" className="number">
              {t('import.torque')}
            </th>
            <th scope="col" className="number">
              {t('import.angle')}
            </th>
            <th scope="col">{t('import.verdict')}</th>
            <th scope="col">{t('import.taken')}</th>
          </tr>
        </thead>
        <tbody>
          {result.preview.map((pull) => {
            const verdict = VERDICTS.find((one) => one === pull.verdict);
            const unit = unitOf(pull.jointRef);
            return (
              <tr key={pull.line}>
                <td className="number">{pull.line}</td>
                <td>{t('import.where-said', { joint: pull.jointRef, stage: pull.stage, round: pull.round })}</td>
                <td className="number">{pull.position}</td>
                <td className="number">
                  {showTorqueFigure(pull.torqueNm, unit, language)} {unit}
                </td>
                <td className="number">{pull.angleDeg === null ? '–' : showAngle(pull.angleDeg, language)}</td>
                <td>{verdict ? <VerdictBadge verdict={verdict} /> : pull.verdict}</td>
                <td>{showInstant(pull.takenAt, language)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}
