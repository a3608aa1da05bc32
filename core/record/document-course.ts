import { say } from '../language/say.ts';
import type { Language } from '../quantity/language.ts';
import type { Block, Row } from './document.ts';
import { isOf, type RecordFacts, sayCell, shortTime, tagOfPerson } from './document-facts.ts';
import type { Entry } from './entry.ts';

/** Every entry of the chain in its order; pulls that follow one another are drawn together, as their table has them. */
export function courseBlocks(facts: RecordFacts): readonly Block[] {
  const { language } = facts;
  const left = (title: string) => ({ title, align: 'left' }) as const;
  return [
    { kind: 'heading', level: 1, text: say(language, 'record.course') },
    {
      kind: 'table',
      name: 'course',
      caption: '',
      columns: [
        left(say(language, 'record.entry')),
        left(say(language, 'record.time')),
        left(say(language, 'record.person-column')),
        left(say(language, 'record.what-happened')),
      ],
      groups: [{ title: '', rows: stretches(facts.entries).map((stretch) => stretchRow(facts, stretch)) }],
    },
  ];
}

/** Runs of pulls by one person; every other entry alone. */
function stretches(entries: readonly Entry[]): readonly (readonly [Entry, ...Entry[]])[] {
  const found: [Entry, ...Entry[]][] = [];
  for (const entry of entries) {
    const stretch = found.at(-1);
    if (stretch && isOf('pull')(entry) && isOf('pull')(stretch[0]) && entry.by.id === stretch[0].by.id)
      stretch.push(entry);
    else found.push([entry]);
  }
  return found;
}

function stretchRow(facts: RecordFacts, stretch: readonly [Entry, ...Entry[]]): Row {
  const [first] = stretch;
  const last = stretch.at(-1)!;
  const isOne = first === last;
  const cells = [
    isOne ? String(first.seq) : `${first.seq}–${last.seq}`,
    isOne ? shortTime(first.at) : `${shortTime(first.at)}\n${shortTime(last.at)}`,
    `${tagOfPerson(facts, first.by)} ${first.by.name}`,
    isOne || !isOf('pull')(first)
      ? sayEvent(facts, first)
      : say(facts.language, 'event.pulls', { count: stretch.length }),
  ];
  return { cells: cells.map((text) => ({ text })), voice: 'plain' };
}

function sayEvent(facts: RecordFacts, { body, seq }: Entry): string {
  const { language } = facts;
  switch (body.kind) {
    case 'opened':
      return say(language, 'event.opened');
    case 'tool-taken': {
      const tag = facts.tools.find(({ taken }) => taken.some((entry) => entry.seq === seq))?.tag ?? '';
      return say(language, 'event.tool-taken', {
        tag,
        wrench: body.tool.wrench.name,
        joints: body.jointRefs.join(', '),
      });
    }
    case 'pull':
      return say(language, 'event.pull', { cell: sayCell(facts, body.pull.cell) });
    case 'pull-moved':
      return say(language, 'event.pull-moved', {
        from: sayCell(facts, body.from),
        to: sayCell(facts, body.to),
        reason: body.reason,
      });
    case 'pull-set-aside':
      return say(language, 'event.pull-set-aside', { cell: sayCell(facts, body.cell), reason: body.reason });
    case 'reworked':
      return say(language, 'event.reworked', {
        joint: body.jointRef,
        position: body.position,
        how: how(body.how, language),
        reason: body.reason,
      });
    case 'accepted':
      return say(language, 'event.accepted', {
        cell: sayCell(facts, body.cell),
        name: body.exception.by.name,
        reason: body.exception.reason,
      });
    case 'noted':
      return say(language, 'event.noted', { text: body.text });
    case 'signed-off':
      return say(language, 'event.signed-off', { statement: body.statement });
    case 'closed':
      return say(language, 'event.closed');
  }
}

const how = (done: 'loosened' | 'fastener-replaced', language: Language): string => say(language, `rework.${done}`);
