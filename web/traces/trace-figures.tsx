import { showAngle, showNumber, type TorqueUnit } from '@clampwright/core/quantity';
import type { TraceAnalysis } from '@clampwright/core/trace';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { shownSlope } from './shown-slope.ts';
import { showTraceTorque } from './shown-torque.ts';

interface TraceFiguresProps {
  readonly analysis: TraceAnalysis;
  readonly unit: TorqueUnit;
}

/** The curve in figures, for whoever would rather read, or cannot see the drawing. */
export function TraceFigures({ analysis, unit }: TraceFiguresProps) {
  const { t } = useTranslation();
  const rows = useRows(analysis, unit);
  return (
    <dl className="trace-figures" aria-label={t('trace.figures')}>
      {rows.map(([name, value]) => (
        <div key={name}>
          <dt>{t(`trace.figure.${name}`)}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

const FIGURES = [
  'peak',
  'end',
  'slope',
  'from-snug',
  'prevailing',
  'fastest',
  'break-away',
  'run-out',
  'slips',
] as const;
type Row = readonly [(typeof FIGURES)[number], string];

function useRows(analysis: TraceAnalysis, unit: TorqueUnit): readonly Row[] {
  const language = useLanguage();
  const peakNm = analysis.kind === 'loosening' ? analysis.loosening.breakAway.torqueNm : analysis.figures.peakTorqueNm;
  const torque = (nm: number): string => showTraceTorque(nm, peakNm, unit, language);
  const angle = (deg: number): string => showAngle(deg, language);
  if (analysis.kind === 'loosening') {
    const { breakAway, runOutNm, slips } = analysis.loosening;
    return [
      ['break-away', torque(breakAway.torqueNm)],
      ['run-out', torque(runOutNm)],
      ['slips', String(slips)],
    ];
  }
  const {
    peakTorqueNm,
    finalAngleDeg,
    slopeNmPerDeg,
    slopeStandardError,
    angleFromSnugDeg,
    prevailingTorqueNm,
    maxRateDegPerS,
  } = analysis.figures;
  const rows: Row[] = [
    ['peak', torque(peakTorqueNm)],
    ['end', angle(finalAngleDeg)],
  ];
  if (slopeNmPerDeg !== undefined) rows.push(['slope', shownSlope(slopeNmPerDeg, slopeStandardError, unit, language)]);
  if (angleFromSnugDeg !== undefined) rows.push(['from-snug', angle(angleFromSnugDeg)]);
  rows.push(['prevailing', torque(prevailingTorqueNm)]);
  if (maxRateDegPerS !== undefined)
    rows.push(['fastest', `${showNumber(maxRateDegPerS, language, { significant: 2 })}°/s`]);
  return rows;
}
