import { showTorque } from '@clampwright/core/quantity';
import { type CalibrationStep, type Direction, permissibleDeviationPercent, toolClass } from '@clampwright/core/wrench';
import { useState } from 'react';
import { flushSync } from 'react-dom';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { Button } from '../../parts/button.tsx';
import { Progress } from '../../parts/progress.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import { LiveReadings } from './live/live-readings.tsx';
import type { LiveFigures } from './live/sources.ts';
import type { InSession } from './new-session.ts';
import { PasteReadings } from './paste-readings.tsx';
import { ReadingForm } from './reading-form.tsx';
import { ReadingsSoFar } from './readings-so-far.tsx';
import { type Act, type Next, nextOf } from './session.ts';

/** One run of comparisons: what to do now, large; what was read so far, beneath. */
export function RunSheet({ wrench, plan, session, onChange, name }: InSession & { readonly name: 'found' | 'left' }) {
  const { t } = useTranslation('lead');
  const run = session[name] ?? session.found;
  const next = nextOf(plan, run.acts);
  const known = toolClass(wrench.type, wrench.class);
  const limitPercent = known.ok ? permissibleDeviationPercent(known.value, wrench.highestNm) : 0;
  const [live, setLive] = useState<LiveFigures>(NOTHING_TOLD);
  const put = (acts: readonly Act[]) => {
    setLive(NOTHING_TOLD);
    const at = nextOf(plan, acts) === undefined ? (name === 'found' ? 'between' : 'finish') : session.at;
    onChange({ ...session, at, [name]: { ...run, acts: [...acts] } });
  };
  const add = (...more: readonly Act[]) => put([...run.acts, ...more]);
  const hear = (figures: LiveFigures, isWhole: boolean) => {
    const { indicated, reference: referenceNm } = figures;
    if (next?.step.kind !== 'point') return;
    const { direction, torqueNm: targetNm } = next.step;
    // Drawn before the next one is heard: two may come in one moment, and each goes to the place whose turn it is.
    flushSync(() => {
      if (!isWhole || referenceNm === undefined) return setLive(figures);
      const indicatedNm = wrench.type === 'I' ? { indicatedNm: indicated ?? targetNm } : {};
      return add({ kind: 'reading', direction, targetNm, referenceNm, ...indicatedNm });
    });
  };
  return (
    <Sheet title={t(`care.${name}`)}>
      <Progress
        done={next ? next.place : plan.steps.length}
        total={plan.steps.length}
        label={t('care.step-of', { step: next?.place ?? 0, total: plan.steps.length })}
      />
      {next ? (
        <div className="calibrate-now" aria-live="polite">
          <StepWords next={next} approach={plan.finalApproachS !== undefined} />
          {next.step.kind === 'point' ? (
            <ReadingForm
              key={`${next.place}/${next.number}/${run.acts.length}`}
              wrench={wrench}
              direction={next.step.direction}
              targetNm={next.step.torqueNm}
              live={live}
              onTake={add}
            />
          ) : (
            <Button
              kind="primary"
              size="work"
              onPress={() => add({ kind: kindOf(next.step), direction: next.step.direction })}
            >
              {t('care.done')}
            </Button>
          )}
        </div>
      ) : null}
      <div className="dialog-actions">
        <Button isDisabled={run.acts.length === 0} onPress={() => put(run.acts.slice(0, -1))}>
          {t('care.undo')}
        </Button>
      </div>
      {next ? <LiveReadings wrench={wrench} figures={live} onFigures={hear} /> : null}
      <ReadingsSoFar plan={plan} acts={run.acts} limitPercent={limitPercent} />
      {next?.step.kind === 'point' ? <PasteReadings plan={plan} acts={run.acts} onTake={add} /> : null}
      <p className="soft">{t('care.kept-here')}</p>
    </Sheet>
  );
}

const NOTHING_TOLD: LiveFigures = {};

const kindOf = ({ kind }: CalibrationStep): 'preload' | 'zero' => (kind === 'zero' ? 'zero' : 'preload');

function StepWords({ next: { step, number, of }, approach }: { readonly next: Next; readonly approach: boolean }) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const direction = (one: Direction) => t(`care.${one}`);
  const torque = (torqueNm: number) => showTorque(torqueNm, 'N·m', language);
  switch (step.kind) {
    case 'preload':
      return (
        <>
          <p className="calibrate-step">
            {t('care.preload', { torque: torque(step.torqueNm), direction: direction(step.direction) })}
          </p>
          <p>{t('care.preload-about', { n: number, of })}</p>
        </>
      );
    case 'zero':
      return (
        <>
          <p className="calibrate-step">{t('care.zero', { direction: direction(step.direction) })}</p>
          <p>{t('care.zero-about')}</p>
        </>
      );
    case 'point':
      return (
        <>
          <p className="calibrate-step">
            {t('care.point', { torque: torque(step.torqueNm), direction: direction(step.direction) })}
          </p>
          <p>
            {t('care.point-about', { n: number, of })} {approach ? t('care.approach') : null}
          </p>
        </>
      );
  }
}
