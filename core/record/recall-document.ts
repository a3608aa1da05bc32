import { sayDate, sayInstant } from '../language/dates.ts';
import { say } from '../language/say.ts';
import type { Language } from '../quantity/language.ts';
import { showNumber } from '../quantity/show-number.ts';
import { showShare, showTorque, showTorqueFigure } from '../quantity/show-quantity.ts';
import type { Assumption, Recall } from '../wrench/recall.ts';
import { ASSUMPTIONS } from '../wrench/recall.ts';
import type { FollowedLine } from '../wrench/rejudge.ts';
import type { Wrench } from '../wrench/wrench.ts';
import type { Block, Document, Fact, Paper, Row } from './document.ts';

/** A recall as it stands, with all that goes onto paper. */
export interface RecallShown {
  readonly recall: Recall;
  readonly wrench: Wrench;
  /** Whose chances decide the order; undefined: the greatest over all. */
  readonly assumption: Assumption | undefined;
  /** The gravest first. */
  readonly lines: readonly FollowedLine[];
}

/** The list to go out with: which fasteners are in doubt, why, and what was done about each. */
export function recallDocument(shown: RecallShown, language: Language, paper: Paper = 'A4'): Document {
  const { recall, wrench, lines } = shown;
  const lastAt = lines
    .flatMap(({ recheck }) => recheck?.at ?? [])
    .toSorted()
    .at(-1);
  return {
    title: say(language, 'recall.title'),
    subject: say(language, 'recall.subject', { wrench: wrench.name, serial: wrench.serial }),
    language,
    paper,
    datedAt: lastAt ?? recall.raisedAt,
    banner: undefined,
    reference: `Clampwright · ${recall.id}`,
    blocks: [
      { kind: 'facts', size: 'big', facts: figures(shown, language) },
      { kind: 'facts', size: 'normal', facts: facts(shown, language) },
      {
        kind: 'note',
        tone: 'caution',
        title: say(language, 'recall.caution-title'),
        lines: [say(language, 'recall.caution')],
      },
      { kind: 'heading', level: 1, text: say(language, 'recall.list') },
      list(shown, language),
    ],
  };
}

/** Chance under the assumption chosen, or the greatest of all. */
const outsideOf = ({ under, outside }: FollowedLine, assumption: Assumption | undefined): number =>
  assumption === undefined ? outside : under[assumption].outside;

function figures({ lines, assumption }: RecallShown, language: Language): readonly Fact[] {
  const expected = lines.reduce((sum, line) => sum + outsideOf(line, assumption), 0);
  const done = lines.filter(({ recheck }) => recheck).length;
  return [
    { label: say(language, 'recall.count'), value: String(lines.length) },
    {
      label: say(language, 'recall.expected'),
      value: showNumber(expected, language, { decimals: expected < 10 ? 1 : 0 }),
    },
    { label: say(language, 'recall.done'), value: `${done} / ${lines.length}` },
  ];
}

function facts({ recall, assumption }: RecallShown, language: Language): readonly Fact[] {
  const { cause, goodAt, foundAt, found, by, raisedAt } = recall;
  const to = sayInstant(foundAt, language);
  return [
    { label: say(language, 'recall.opened'), value: `${sayInstant(raisedAt, language)}, ${by}` },
    {
      label: say(language, 'recall.cause'),
      value: cause.kind === 'dropped' ? cause.what : say(language, 'recall.cause-found-off'),
    },
    {
      label: say(language, 'recall.span'),
      value:
        goodAt === undefined
          ? say(language, 'recall.from-first', { to })
          : say(language, 'recall.from-to', { from: sayInstant(goodAt, language), to }),
    },
    {
      label: say(language, 'recall.error'),
      value: found
        .map(({ torqueNm, deviationPercent }) =>
          say(language, 'recall.error-at', {
            deviation: showNumber(deviationPercent, language, { decimals: 2 }),
            torque: showTorque(torqueNm, 'N·m', language),
          }),
        )
        .join('\n'),
    },
    {
      label: say(language, 'recall.assumption'),
      value: assumption === undefined ? say(language, 'recall.worst') : say(language, `recall.${assumption}`),
    },
  ];
}

function list({ lines, assumption }: RecallShown, language: Language): Block {
  const left = (title: string) => ({ title, align: 'left' }) as const;
  const right = (title: string) => ({ title, align: 'right' }) as const;
  return {
    kind: 'table',
    name: 'recall',
    caption: '',
    columns: [
      left(say(language, 'recall.class')),
      right(say(language, 'recall.chance')),
      left(say(language, 'recall.joint')),
      right(say(language, 'recall.position')),
      left(say(language, 'recall.stage')),
      left(say(language, 'recall.when')),
      right(`${say(language, 'recall.shown')}, N·m`),
      right(`${say(language, 'recall.true')}, N·m`),
      right(`${say(language, 'recall.limits')}, N·m`),
      left(say(language, 'recall.done')),
    ],
    groups: jobsOf(lines).map(([title, rows]) => ({
      title,
      rows: rows.map((line) => row(line, assumption, language)),
    })),
  };
}

/** Job by job, the one with the gravest pull first: somebody goes to one asset at a time. */
function jobsOf(lines: readonly FollowedLine[]): readonly (readonly [string, readonly FollowedLine[]])[] {
  const jobs = new Map<string, FollowedLine[]>();
  for (const line of lines) {
    const title = `${line.pull.asset}: ${line.pull.job.title}`;
    const rows = jobs.get(title) ?? [];
    rows.push(line);
    jobs.set(title, rows);
  }
  return [...jobs];
}

function row(line: FollowedLine, assumption: Assumption | undefined, language: Language): Row {
  const { pull, under, recheck } = line;
  const torque = (torqueNm: number) => showTorqueFigure(torqueNm, 'N·m', language);
  const { lowerNm, upperNm } = pull;
  const worst = ASSUMPTIONS.toSorted((a, b) => under[b].outside - under[a].outside)[0] ?? 'at-once';
  const texts = [
    pull.consequenceClass ?? say(language, 'recall.no-class'),
    showShare(outsideOf(line, assumption), language),
    `${pull.jointRef} ${pull.joint}`,
    String(pull.position),
    `${pull.stage}/${pull.round}`,
    sayDate(pull.takenAt, language),
    torque(pull.torqueNm),
    torque(under[assumption ?? worst].torqueNm),
    lowerNm === undefined && upperNm === undefined
      ? say(language, 'recall.no-limits')
      : `${lowerNm === undefined ? '' : torque(lowerNm)}–${upperNm === undefined ? '' : torque(upperNm)}`,
    recheck ? `${say(language, `recall.${recheck.outcome}`)}, ${sayDate(recheck.at, language)}, ${recheck.by}` : '',
  ];
  return { cells: texts.map((text) => ({ text })), voice: recheck ? 'quiet' : 'plain' };
}
