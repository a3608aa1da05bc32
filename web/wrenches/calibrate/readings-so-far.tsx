import { showNumber, showTorque } from '@clampwright/core/quantity';
import type { CalibrationPlan } from '@clampwright/core/wrench';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { StateWord } from '../../parts/state-word.tsx';
import { type Act, deviationPercent, readingsAt } from './session.ts';

interface ReadingsSoFarProps {
  readonly plan: CalibrationPlan;
  readonly acts: readonly Act[];
  readonly limitPercent: number;
}

/** Every reading with its deviation, held against the permissible one by sign, word and colour. */
export function ReadingsSoFar({ plan, acts, limitPercent }: ReadingsSoFarProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const points = readingsAt(plan, acts).filter(({ readings }) => readings.length > 0);
  if (points.length === 0) return null;
  const limit = showNumber(limitPercent, language);
  return (
    <section className="calibrate-so-far">
      <h3 className="sheet-subtitle">{t('care.readings')}</h3>
      {points.toReversed().map(({ step, readings }) => (
        <div key={`${step.direction} ${step.torqueNm}`}>
          <p>
            <strong>
              {t('care.at-direction', {
                torque: showTorque(step.torqueNm, 'N·m', language),
                direction: t(`care.${step.direction}`),
              })}
            </strong>
          </p>
          <ol className="calibrate-readings">
            {readings.map((reading, index) => {
              const deviation = deviationPercent(reading);
              const isWithin = Math.abs(deviation) <= limitPercent;
              return (
                // A reading has no identity; it never changes its place.
                <li key={index}>
                  <span className="calibrate-figure">{showTorque(reading.referenceNm, 'N·m', language)}</span>
                  <span className="calibrate-figure">
                    {showNumber(deviation, language, { decimals: 2 })}
                    {'\u00a0%'}
                  </span>
                  <StateWord kind={isWithin ? 'good' : 'bad'}>
                    {t(isWithin ? 'care.within' : 'care.outside', { limit })}
                  </StateWord>
                </li>
              );
            })}
          </ol>
        </div>
      ))}
    </section>
  );
}
