import { sayInstant } from '../language/dates.ts';
import { sayReason } from '../language/reasons.ts';
import { say } from '../language/say.ts';
import { sayRole, sayVerdict } from '../language/words.ts';
import type { Block } from './document.ts';
import { isOf, type RecordFacts, sayCell } from './document-facts.ts';
import type { CellState } from './state.ts';
import { attemptsOf, type TracedAttempt } from './traced-attempt.ts';

/** What a reader must not overlook, at the front of the record: what the lead let stand, and what is not certain. */
export function doubtBlocks(facts: RecordFacts): readonly Block[] {
  const { language } = facts;
  const exceptions = exceptionLines(facts);
  const doubts = doubtLines(facts);
  const heading: Block = { kind: 'heading', level: 1, text: say(language, 'record.exceptions-and-doubts') };
  if (exceptions.length + doubts.length === 0)
    return [heading, { kind: 'paragraph', text: say(language, 'record.none-of-them') }];
  const note = (tone: 'exception' | 'doubt', title: string, lines: readonly string[]): readonly Block[] =>
    lines.length === 0 ? [] : [{ kind: 'note', tone, title, lines }];
  return [
    heading,
    ...note('exception', say(language, 'record.exceptions'), exceptions),
    ...note('doubt', say(language, 'record.doubts'), doubts),
  ];
}

/** Each time that a lead gave a word against what speaks against it. */
export function exceptionLines(facts: RecordFacts): readonly string[] {
  const { entries, language } = facts;
  const who = ({
    by,
    reason,
  }: {
    readonly by: { readonly name: string; readonly role: 'technician' | 'lead' | 'keeper' | 'reader' };
    readonly reason: string;
  }) => ({
    name: by.name,
    role: sayRole(by.role, language),
    reason,
  });
  const tools = entries.filter(isOf('tool-taken')).flatMap(({ body }) => {
    if (!body.exception) return [];
    const line = say(language, 'record.tool-exception', { wrench: body.tool.wrench.name, ...who(body.exception) });
    return [`${line}\n${body.objections.join('\n')}`.trim()];
  });
  const cells = entries
    .filter(isOf('accepted'))
    .map(({ body }) => say(language, 'record.accepted', { cell: sayCell(facts, body.cell), ...who(body.exception) }));
  return [...tools, ...cells];
}

/** Positions whose standing verdict is not `within`, pulls with something odd about them, and a clock that ran back. */
export function doubtLines(facts: RecordFacts): readonly string[] {
  const cells = facts.state.joints.flatMap((joint) => joint.cells.flat());
  return [...cells.flatMap((cell) => cellDoubt(facts, cell)), ...clockLines(facts)];
}

const ODD = ['notice-device-clock', 'notice-beyond-attempts'];

function cellDoubt(facts: RecordFacts, cell: CellState): readonly string[] {
  const standing = attemptsOf(facts, cell).filter(({ attempt }) => attempt.standing === 'stands');
  const last = standing.at(-1);
  if (!last) return [];
  const isUnsettled = last.attempt.verdict !== 'within';
  const oddities = standing.filter(({ judgement }) => judgement.reasons.some(({ code }) => ODD.includes(code)));
  const told = isUnsettled ? [...new Set([last, ...oddities])] : oddities;
  return told.map((attempt) => doubtLine(facts, cell, attempt));
}

function doubtLine(facts: RecordFacts, cell: CellState, { attempt, judgement }: TracedAttempt): string {
  const { language, sheet } = facts;
  const unit = sheet.joints.find(({ ref }) => ref === cell.ref.jointRef)!.joint.content.torqueUnit;
  const reasons = judgement.reasons
    .filter(({ code }) => code !== 'inside')
    .map((reason) => sayReason(reason, language, unit));
  return say(language, 'record.cell-doubt', {
    cell: sayCell(facts, cell.ref),
    verdict: sayVerdict(attempt.verdict, language),
    reasons: reasons.join(' '),
  });
}

const clockLines = ({ entries, language }: RecordFacts): readonly string[] =>
  entries.flatMap(({ seq, at, clockSaid }) =>
    clockSaid === undefined
      ? []
      : [
          say(language, 'record.clock-held', {
            seq,
            clock: sayInstant(clockSaid, language),
            at: sayInstant(at, language),
          }),
        ],
  );
