import { sayInstant } from '../language/dates.ts';
import { say } from '../language/say.ts';
import { sayRole } from '../language/words.ts';
import type { Block, Fact } from './document.ts';
import { isOf, type RecordFacts } from './document-facts.ts';
import type { Entry } from './entry.ts';

/** What was worked on, where, by whom, when. */
export function workBlocks(facts: RecordFacts): readonly Block[] {
  const { language } = facts;
  return [
    { kind: 'heading', level: 1, text: say(language, 'record.work') },
    { kind: 'facts', size: 'normal', facts: [...sheetFacts(facts), ...courseFacts(facts), peopleFact(facts)] },
  ];
}

function sheetFacts({ sheet, language }: RecordFacts): readonly Fact[] {
  return [
    { label: say(language, 'record.job'), value: sheet.title },
    { label: say(language, 'record.job-id'), value: sheet.id },
    { label: say(language, 'record.asset'), value: sheet.asset.name },
    { label: say(language, 'record.location'), value: sheet.asset.location || '–' },
  ];
}

function courseFacts({ entries, state, language }: RecordFacts): readonly Fact[] {
  const whenBy = (entry: Entry) =>
    say(language, 'record.when-by', { when: sayInstant(entry.at, language), name: entry.by.name });
  const signed = state.status === 'open' ? undefined : entries.findLast(isOf('signed-off'));
  const closed = entries.findLast(isOf('closed'));
  return [
    { label: say(language, 'record.status'), value: say(language, `status.${state.status}`) },
    { label: say(language, 'record.opened'), value: whenBy(entries[0]!) },
    ...(signed
      ? [{ label: say(language, 'record.signed-off'), value: `${whenBy(signed)}\n${signed.body.statement}` }]
      : []),
    ...(closed ? [{ label: say(language, 'record.closed'), value: whenBy(closed) }] : []),
  ];
}

const peopleFact = ({ people, language }: RecordFacts): Fact => ({
  label: say(language, 'record.people'),
  value: people
    .map(({ tag, person }) =>
      say(language, 'record.person', { tag, name: person.name, role: sayRole(person.role, language) }),
    )
    .join('\n'),
});
