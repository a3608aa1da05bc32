import { sayReason } from '../language/reasons.ts';
import { say } from '../language/say.ts';
import { showAngle } from '../quantity/show-quantity.ts';
import type { TorqueUnit } from '../quantity/unit.ts';
import { type EntryOf, isOf, type RecordFacts, sayCell } from './document-facts.ts';
import type { Entry } from './entry.ts';
import type { Attempt, CellState } from './state.ts';
import type { TracedAttempt } from './traced-attempt.ts';

/** All that is to be said of an attempt: what became of it, why its verdict, who let it stand. */
export function remarks(
  facts: RecordFacts,
  cell: CellState,
  traced: TracedAttempt,
  unit: TorqueUnit,
): readonly string[] {
  const { language } = facts;
  const { attempt, judgement, arrival, pull } = traced;
  const { detail } = pull.body.pull.source;
  return [
    ...fate(facts, cell, attempt),
    ...(arrival
      ? [say(language, 'record.moved-from', { cell: sayCell(facts, arrival.body.from), reason: arrival.body.reason })]
      : []),
    ...judgement.reasons.filter(({ code }) => code !== 'inside').map((reason) => sayReason(reason, language, unit)),
    ...(judgement.carriedDeg === undefined
      ? []
      : [say(language, 'record.carried', { angle: showAngle(judgement.carriedDeg, language) })]),
    ...acceptance(facts, cell, attempt),
    ...(detail === undefined ? [] : [`(${detail})`]),
  ];
}

/** Why an attempt no longer stands, told by the entry that took it out. */
function fate(facts: RecordFacts, { ref }: CellState, attempt: Attempt): readonly string[] {
  if (attempt.standing === 'stands') return [];
  const { language, entries } = facts;
  const later = entries.slice(attempt.seq);
  const isThisPull = ({ body }: EntryOf<'pull-moved'> | EntryOf<'pull-set-aside'>) => body.pullId === attempt.pullId;
  const isHere = ({ body }: EntryOf<'reworked'>) => body.jointRef === ref.jointRef && body.position === ref.position;
  switch (attempt.standing) {
    case 'set-aside':
      return tell(later.filter(isOf('pull-set-aside')).find(isThisPull), ({ body }) =>
        say(language, 'record.set-aside-why', { reason: body.reason }),
      );
    case 'moved':
      return tell(later.filter(isOf('pull-moved')).find(isThisPull), ({ body }) =>
        say(language, 'record.moved-to', { cell: sayCell(facts, body.to), reason: body.reason }),
      );
    case 'undone':
      return tell(later.filter(isOf('reworked')).find(isHere), ({ body }) =>
        say(language, 'record.undone-by', { how: say(language, `rework.${body.how}`), reason: body.reason }),
      );
  }
}

const tell = <T extends Entry>(entry: T | undefined, text: (entry: T) => string): readonly string[] =>
  entry ? [text(entry)] : [];

/** The lead's word for the cell, told on the attempt that it let stand. */
function acceptance(facts: RecordFacts, cell: CellState, attempt: Attempt): readonly string[] {
  const isLast = cell.attempts.findLast(({ standing }) => standing === 'stands') === attempt;
  if (!cell.acceptedBy || !isLast) return [];
  const { jointRef, stage, round, position } = cell.ref;
  const isHere = ({ body: { cell: at } }: EntryOf<'accepted'>) =>
    at.jointRef === jointRef && at.stage === stage && at.round === round && at.position === position;
  return tell(facts.entries.filter(isOf('accepted')).findLast(isHere), ({ body }) =>
    say(facts.language, 'record.accepted-why', { name: body.exception.by.name, reason: body.exception.reason }),
  );
}
