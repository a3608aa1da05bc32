import { say } from '../language/say.ts';
import { sayVerdict } from '../language/words.ts';
import type { Block, Fact, Row } from './document.ts';
import { exceptionLines } from './document-doubts.ts';
import { isOf, type RecordFacts, sayJoint } from './document-facts.ts';
import { POSITION_VERDICTS, positionVerdicts } from './position-verdict.ts';

/** The outcome in a few large figures, and joint by joint how many positions stand how. */
export function resultBlocks(facts: RecordFacts): readonly Block[] {
  return [{ kind: 'facts', size: 'big', facts: figures(facts) }, jointTable(facts)];
}

function figures(facts: RecordFacts): readonly Fact[] {
  const { state, entries, language } = facts;
  const cells = state.joints.flatMap((joint) => joint.cells.flat());
  const pulls = entries.filter(isOf('pull'));
  const fact = (
    label: 'record.cells-done' | 'record.pulls' | 'record.not-within' | 'record.exception-count',
    value: string,
  ): Fact => ({
    label: say(language, label),
    value,
  });
  return [
    fact(
      'record.cells-done',
      say(language, 'record.done-of', {
        done: cells.filter(({ need }) => need === 'nothing').length,
        total: cells.length,
      }),
    ),
    fact('record.pulls', String(pulls.length)),
    fact('record.not-within', String(pulls.filter(({ body }) => body.judgement.verdict !== 'within').length)),
    fact('record.exception-count', String(exceptionLines(facts).length)),
  ];
}

function jointTable(facts: RecordFacts): Block {
  const { language, sheet, state } = facts;
  const right = (title: string) => ({ title, align: 'right' }) as const;
  const rows = sheet.joints.map((joint, index): Row => {
    const content = joint.joint.content;
    const verdicts = positionVerdicts(state.joints[index]!);
    const counts = POSITION_VERDICTS.map((verdict) => verdicts.filter((found) => found === verdict).length);
    const texts = [
      sayJoint(joint),
      content.fastener.thread,
      String(verdicts.length),
      ...counts.map((count) => (count === 0 ? '–' : String(count))),
    ];
    return { cells: texts.map((text) => ({ text })), voice: 'plain' };
  });
  return {
    kind: 'table',
    name: 'result',
    caption: '',
    columns: [
      { title: say(language, 'record.joint'), align: 'left' },
      { title: say(language, 'record.fastener'), align: 'left' },
      right(say(language, 'record.positions')),
      ...POSITION_VERDICTS.map((verdict) => right(sayVerdict(verdict, language))),
    ],
    groups: [{ title: '', rows }],
  };
}
