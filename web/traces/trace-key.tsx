import { sayReason } from '@clampwright/core/language';
import { convertTorque, showAngle, type TorqueUnit } from '@clampwright/core/quantity';
import { traceReason } from '@clampwright/core/verdict';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { CORNERS } from './marks.ts';
import { showTraceTorque } from './shown-torque.ts';
import type { MarkShape, TraceMark } from './trace-drawing.ts';

interface TraceKeyProps {
  readonly marks: readonly TraceMark[];
  readonly unit: TorqueUnit;
  /** Highest torque of the curve, N·m. */
  readonly peakNm: number;
}

/** What each numbered mark is, where it lies, and why it speaks against the pull. */
export function TraceKey({ marks, unit, peakNm }: TraceKeyProps) {
  const { t } = useTranslation();
  const language = useLanguage();
  return (
    <ol className="trace-key" aria-label={t('trace.key')}>
      {marks.map((mark) => (
        <li key={mark.number} className={mark.what.kind === 'finding' ? 'trace-key-finding' : undefined}>
          <MarkSign shape={mark.shape} number={mark.number} isFilled={mark.what.kind === 'finding'} />
          <span>
            <strong>{t(`trace.mark.${mark.what.kind}`)}</strong>{' '}
            {t('trace.at', {
              angle: showAngle(mark.deg, language),
              torque: showTraceTorque(convertTorque(mark.torque, unit, 'N·m'), peakNm, unit, language),
            })}
            {mark.what.kind === 'finding' ? (
              <span className="trace-why">
                {sayReason({ ...mark.what.finding, code: traceReason(mark.what.finding.kind) }, language, unit)}{' '}
                {t('trace.confidence', { percent: Math.min(99, Math.round(100 * mark.what.finding.confidence)) })}
              </span>
            ) : null}
          </span>
        </li>
      ))}
    </ol>
  );
}

interface MarkSignProps {
  readonly shape: MarkShape;
  readonly number: number;
  readonly isFilled: boolean;
}

const MarkSign = ({ shape, number, isFilled }: MarkSignProps) => (
  <svg viewBox="-16 -16 32 32" width="32" height="32" role="img" aria-label={String(number)}>
    <polygon
      className={isFilled ? 'trace-sign trace-sign-filled' : 'trace-sign'}
      points={CORNERS[shape].map(([x, y]) => `${12 * x},${12 * y}`).join(' ')}
    />
    <text
      className={isFilled ? 'trace-sign-word-filled' : undefined}
      y={shape === 'triangle' ? 8 : 5}
      textAnchor="middle"
    >
      {number}
    </text>
  </svg>
);
