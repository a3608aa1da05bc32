import { sayDrift } from '@clampwright/core/language';
import { showNumber, showTorque } from '@clampwright/core/quantity';
import { driftOf, permissibleDeviationPercent, toolClass } from '@clampwright/core/wrench';
import type { WrenchCare } from '@clampwright/server/contract';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { Select } from '../../parts/select.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import { EmptyState } from '../../parts/states.tsx';
import { PictureFigure } from '../../plots/picture-figure.tsx';
import { type HistoryAt, histories } from './histories.ts';
import { historyPlot } from './history-plot.ts';

/** The deviations of a wrench over the years at one of its points, with its drift in words. */
export function DeviationHistory({ care }: { readonly care: WrenchCare }) {
  const { t } = useTranslation('lead');
  const all = histories(care.calibrations, care.wrench);
  const [chosen, setChosen] = useState(0);
  const history = all[chosen] ?? all.at(-1);
  const known = toolClass(care.wrench.type, care.wrench.class);
  return (
    <Sheet title={t('care.history')}>
      {history && known.ok ? (
        <>
          <PointSelect all={all} chosen={all.indexOf(history)} onChange={setChosen} />
          <HistoryFigure
            history={history}
            limitPercent={permissibleDeviationPercent(known.value, care.wrench.highestNm)}
          />
        </>
      ) : (
        <EmptyState title={t('care.history-none')} text={t('care.history-none-text')} />
      )}
    </Sheet>
  );
}

interface PointSelectProps {
  readonly all: readonly HistoryAt[];
  readonly chosen: number;
  readonly onChange: (chosen: number) => void;
}

function PointSelect({ all, chosen, onChange }: PointSelectProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  return (
    <Select
      label={t('care.history-at')}
      value={String(chosen)}
      options={all.map(({ torqueNm, direction }, index) => ({
        value: String(index),
        label: t('care.at-direction', {
          torque: showTorque(torqueNm, 'N·m', language),
          direction: t(`care.${direction}`),
        }),
      }))}
      onChange={(value) => onChange(Number(value))}
    />
  );
}

function HistoryFigure({ history, limitPercent }: { readonly history: HistoryAt; readonly limitPercent: number }) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const drift = driftOf(history.deviations, limitPercent);
  const title = t('care.at-direction', {
    torque: showTorque(history.torqueNm, 'N·m', language),
    direction: t(`care.${history.direction}`),
  });
  const plot = historyPlot(history, drift, limitPercent, {
    year: t('care.year'),
    deviation: t('care.deviation'),
    limits: t('care.limits'),
    limitsRead: `±\u00a0${showNumber(limitPercent, language)}\u00a0%`,
    found: t('care.found'),
    left: t('care.left'),
    trend: t('care.trend'),
    band: t('care.trend-band'),
  });
  return (
    <>
      <p className="drift-words">{sayDrift(drift, language)}</p>
      <PictureFigure picture={{ kind: 'plot', title, plot }} />
    </>
  );
}
