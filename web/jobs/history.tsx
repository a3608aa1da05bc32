import type { Entry, JobState, Pull } from '@clampwright/core/record';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Button } from '../parts/button.tsx';
import { showInstant } from '../parts/dates.ts';
import { Sheet } from '../parts/sheet.tsx';
import { VerdictBadge } from '../parts/verdict-badge.tsx';
import { TraceButton } from '../traces/trace-button.tsx';
import { historyWords } from './history-words.ts';
import type { JobInHand } from './job-in-hand.ts';

const SHOWN_FIRST = 20;

/** Everything that was appended to a job, the latest first. */
export function History({ entries, state }: JobInHand) {
  const { t } = useTranslation();
  const [isWhole, setWhole] = useState(false);
  const shown = isWhole ? entries : entries.slice(-SHOWN_FIRST);
  const hidden = entries.length - shown.length;
  return (
    <Sheet title={t('history.title')}>
      <ol className="history" reversed start={entries.length}>
        {shown.toReversed().map((entry) => (
          <HistoryLine key={entry.id} entry={entry} entries={entries} state={state} />
        ))}
      </ol>
      {hidden > 0 ? <Button onPress={() => setWhole(true)}>{t('history.whole', { count: hidden })}</Button> : null}
    </Sheet>
  );
}

const unitOf = ({ sheet }: JobState, { cell }: Pull) =>
  sheet.joints.find(({ ref }) => ref === cell.jointRef)?.joint.content.torqueUnit ?? 'N·m';

function HistoryLine({ entry, entries, state }: JobInHand & { readonly entry: Entry }) {
  const { t } = useTranslation();
  const language = useLanguage();
  const { body } = entry;
  const verdict = body.kind === 'pull' || body.kind === 'pull-moved' ? body.judgement.verdict : undefined;
  return (
    <li className="history-line">
      <span className="soft small history-when">
        {t('history.when-by', { when: showInstant(entry.at, language), name: entry.by.name })}
      </span>
      <span className="history-what">
        <span>{historyWords(entry, entries, language)}</span>
        {verdict ? <VerdictBadge verdict={verdict} /> : null}
        {body.kind === 'pull' ? (
          <TraceButton state={state} entry={entry} unit={unitOf(state, body.pull)} isSilent />
        ) : null}
      </span>
    </li>
  );
}
