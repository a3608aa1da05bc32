import { say, sayStage } from '@clampwright/core/language';
import type { Step } from '@clampwright/core/procedure';
import { showAngle, showTorque, type TorqueUnit } from '@clampwright/core/quantity';
import type { CellState, Entry, JobState } from '@clampwright/core/record';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { showInstant } from '../parts/dates.ts';
import { VerdictBadge } from '../parts/verdict-badge.tsx';
import { TraceButton } from '../traces/trace-button.tsx';

interface PositionAttemptsProps {
  readonly position: number;
  readonly cells: readonly CellState[];
  readonly steps: readonly Step[];
  readonly entries: readonly Entry[];
  readonly unit: TorqueUnit;
  readonly state: JobState;
}

/** Every attempt on one position, over all stages; also what no longer stands. */
export function PositionAttempts({ position, cells, steps, entries, unit, state }: PositionAttemptsProps) {
  const { t } = useTranslation();
  const touched = cells.filter((cell) => cell.attempts.length > 0 || cell.acceptedBy);
  return (
    <section aria-labelledby="attempts-title">
      <h2 id="attempts-title" className="sheet-subtitle">
        {t('attempts.title', { position })}
      </h2>
      {touched.length === 0 ? <p className="soft">{t('attempts.none')}</p> : null}
      {touched.map((cell) => (
        <CellAttempts
          key={`${cell.ref.stage} ${cell.ref.round}`}
          cell={cell}
          step={steps.find(({ stage, round }) => stage === cell.ref.stage && round === cell.ref.round)}
          entries={entries}
          unit={unit}
          state={state}
        />
      ))}
    </section>
  );
}

interface CellAttemptsProps {
  readonly cell: CellState;
  readonly step: Step | undefined;
  readonly entries: readonly Entry[];
  readonly unit: TorqueUnit;
  readonly state: JobState;
}

function CellAttempts({ cell, step, entries, unit, state }: CellAttemptsProps) {
  const { t } = useTranslation();
  const language = useLanguage();
  return (
    <div className="attempts">
      <p className="soft small">
        {step ? say(language, 'record.step', { ...cell.ref, kind: sayStage(step.kind, language) }) : null}
      </p>
      <ol>
        {cell.attempts.map((attempt) => {
          const entry = entries.find(({ seq }) => seq === attempt.seq);
          const made = entries.find(({ id }) => id === attempt.pullId);
          return (
            <li key={attempt.seq} className={attempt.standing === 'stands' ? 'attempt' : 'attempt attempt-gone'}>
              <VerdictBadge verdict={attempt.verdict} />
              <span className="attempt-figures">
                {showTorque(attempt.torqueNm, unit, language)}
                {attempt.angleDeg === undefined ? null : `, ${showAngle(attempt.angleDeg, language)}`}
              </span>
              <span className="soft small">
                {attempt.standing === 'stands' ? null : `${t(`attempts.standing.${attempt.standing}`)} · `}
                {entry ? `${entry.by.name}, ${showInstant(entry.at, language)}` : null}
              </span>
              <TraceButton state={state} entry={made} unit={unit} />
            </li>
          );
        })}
      </ol>
      {cell.acceptedBy ? <p>{t('attempts.accepted', { name: cell.acceptedBy.name })}</p> : null}
    </div>
  );
}
