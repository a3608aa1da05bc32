import { showAngle, type TorqueUnit } from '@clampwright/core/quantity';
import { type JobState, type Pull, shownTrace, type Trace } from '@clampwright/core/record';
import type { EarlierTraces } from '@clampwright/server/contract';
import { useMemo, useRef, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Button } from '../parts/button.tsx';
import { useDarkScheme } from './look.ts';
import { showTraceTorque } from './shown-torque.ts';
import { traceDrawing } from './trace-drawing.ts';
import { TraceFigures } from './trace-figures.tsx';
import { TraceKey } from './trace-key.tsx';
import TracePlot, { type PlotHand } from './trace-plot.tsx';
import './traces.css';

interface TraceViewProps {
  readonly state: JobState;
  readonly pull: Pull;
  readonly trace: Trace;
  readonly earlier: EarlierTraces;
  readonly unit: TorqueUnit;
}

interface GroundWordsProps {
  readonly earlier: EarlierTraces;
  readonly isLoosening: boolean;
}

const STEP = { near: 0.5, far: 2 } as const;

/** A curve to look into: drawn, read off, zoomed, with its key and its figures. */
export default function TraceView({ state, pull, trace, earlier, unit }: TraceViewProps) {
  const { t } = useTranslation();
  const language = useLanguage();
  const scheme = useDarkScheme() ? 'dark' : 'light';
  const shown = useMemo(() => shownTrace(state, pull, trace), [state, pull, trace]);
  const drawing = useMemo(
    () => traceDrawing(shown, pull.trace?.findings ?? [], earlier, unit),
    [shown, pull, earlier, unit],
  );
  const peakNm = useMemo(() => shown.torqueNm.reduce((most, nm) => Math.max(most, nm), 0), [shown]);
  const hand = useRef<PlotHand>(null);
  const [read, setRead] = useState(shown.angleDeg.length - 1);
  const axes = useMemo(() => ({ angle: t('trace.axis-angle'), torque: t('trace.axis-torque', { unit }) }), [t, unit]);
  const moveTo = (index: number): void => {
    hand.current?.readAt(index);
    setRead(index);
  };
  const readWords = `${showAngle(shown.angleDeg[read] ?? 0, language)} · ${showTraceTorque(shown.torqueNm[read] ?? 0, peakNm, unit, language)}`;
  return (
    <div className="trace">
      <div className="trace-bar">
        <span className="trace-read">{readWords}</span>
        <span className="actions">
          <Button onPress={() => hand.current?.zoom(STEP.near)}>{t('trace.nearer')}</Button>
          <Button onPress={() => hand.current?.zoom(STEP.far)}>{t('trace.farther')}</Button>
          <Button onPress={() => hand.current?.whole()}>{t('trace.whole')}</Button>
        </span>
      </div>
      {/* made anew in another theme: a canvas keeps the colours that it was drawn in */}
      <TracePlot key={scheme} drawing={drawing} axes={axes} hand={hand} onRead={setRead} />
      <input
        className="trace-slider"
        type="range"
        min={0}
        max={shown.angleDeg.length - 1}
        value={read}
        aria-label={t('trace.read')}
        aria-valuetext={readWords}
        onChange={({ target }) => moveTo(target.valueAsNumber)}
      />
      <p className="soft small">{t('trace.how')}</p>
      <GroundWords earlier={earlier} isLoosening={drawing.kind === 'loosening'} />
      <TraceKey marks={drawing.marks} unit={unit} peakNm={peakNm} />
      <TraceFigures analysis={shown.analysis} unit={unit} />
    </div>
  );
}

/** What lies under the curve, in words. */
function GroundWords({ earlier: { expected, curves }, isLoosening }: GroundWordsProps) {
  const { t } = useTranslation();
  if (isLoosening) return <p className="small">{t('trace.loosening')}</p>;
  return (
    <p className="small">
      {t('trace.earlier', { count: curves.length })}{' '}
      {expected?.basis === 'learned' ? t('trace.learned', { count: expected.traces ?? 0 }) : null}
      {expected?.basis === 'mechanics' ? t('trace.mechanics') : null}
      {expected ? null : t('trace.not-expected')}
    </p>
  );
}
