import { type LineDescription, lineDescriptionSchema, lineReader, OWN_LINES } from '@clampwright/core/line';
import { expect, it } from 'vitest';
import { type Chance, chanceFrom } from '../simulated/chance.ts';
import { examplePull } from './example.ts';
import { linesOf } from './write.ts';

const LINES = 500_000;
const PIECE_LINES = 500;

/** What a bad cable, a second sender on the line, or another device makes of a line. */
const DAMAGES: readonly ((line: string, other: string, chance: Chance) => string)[] = [
  (line, _, chance) => line.slice(0, at(line, chance)),
  (line, _, chance) => line.slice(at(line, chance)),
  (line, other, chance) => line.slice(0, at(line, chance)) + other.slice(at(other, chance)),
  (line, _, chance) => put(line, at(line, chance), 1, byte(chance)),
  (line, _, chance) => put(line, at(line, chance), 1, ''),
  (line, _, chance) => put(line, at(line, chance), 0, byte(chance)),
  (line, _, chance) => put(line, at(line, chance), 8, '########'),
  (line, other) => line + other,
  (_line, _other, chance) => Array.from({ length: 12 }, () => byte(chance)).join(''),
  () => '',
];

const at = (line: string, chance: Chance): number => Math.floor(chance.between(0, line.length));
const byte = (chance: Chance): string => String.fromCharCode(Math.floor(chance.between(0, 256)));
const put = (line: string, from: number, count: number, text: string): string =>
  line.slice(0, from) + text + line.slice(from + count);

function damaged(good: readonly string[], chance: Chance): string {
  const pick = (): string => good[Math.floor(chance.between(0, good.length))] ?? '';
  const damage = DAMAGES[Math.floor(chance.between(0, DAMAGES.length))];
  return damage?.(pick(), pick(), chance) ?? '';
}

/** Feeds damaged lines; the lines that were taken for the end of a pull. */
function takenFrom(description: LineDescription, good: readonly string[], seed: number): readonly string[] {
  const chance = chanceFrom(seed);
  const reader = lineReader(description);
  const taken: string[] = [];
  for (let piece = 0; piece < LINES / PIECE_LINES; piece++) {
    const text = Array.from({ length: PIECE_LINES }, () => `${damaged(good, chance)}\n`).join('');
    for (const event of reader.take(text)) if (event.kind === 'pull') taken.push(event.raw);
  }
  return taken;
}

it('takes no line of half a million damaged ones that the wrench did not send', () => {
  const { pull, stamp } = examplePull(1);
  const good = [...linesOf(pull, stamp).slice(-40), ...linesOf(examplePull(2).pull, examplePull(2).stamp).slice(-2)];
  const sent = new Set(good.map((line) => line.trimEnd()));
  const bare = [...sent];
  const strange = takenFrom(OWN_LINES, bare, 417).filter((raw) => !sent.has(raw));
  expect(strange).toEqual([]);
}, 60_000);

/** A made-up maker's lines without a check: nothing but their form tells good from bad. */
const UNCHECKED = lineDescriptionSchema.parse({
  name: 'Bench wrench',
  delimiter: ';',
  decimalSign: 'comma',
  torqueUnit: 'N·m',
  lines: [
    {
      says: 'result',
      fields: [{ means: 'mark', text: 'KW' }, { means: 'number' }, { means: 'torque' }, { means: 'angle' }],
    },
  ],
  endOfPull: { by: 'result' },
});
/** The same form, written by hand. */
const FORM = /^ *KW *; *\d{1,9} *; *[+-]?\d{1,7}(,\d{1,9})? *; *([+-]?\d{1,7}(,\d{1,9})?|-?) *$/;

it('takes no line of half a million that has not the form described, to the letter', () => {
  const good = ['KW;12;85,4;35,5', 'KW;13;9,75;-', 'KW;9999;120;0'];
  const taken = takenFrom(UNCHECKED, good, 418);
  expect(taken.length).toBeGreaterThan(1000);
  expect(taken.filter((raw) => !FORM.test(raw))).toEqual([]);
}, 60_000);
