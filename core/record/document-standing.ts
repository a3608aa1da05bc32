import { say } from '../language/say.ts';
import type { Block } from './document.ts';
import type { RecordFacts } from './document-facts.ts';
import { sayNoSeal } from './document-seal.ts';
import type { RecordFault } from './verify.ts';

/** What a reader must know before anything else: invented, unsealed, or not as it was sealed. */
export function standingBlocks(facts: RecordFacts): readonly Block[] {
  const { language, sheet, file, faults } = facts;
  const note = (tone: 'notice' | 'exception', title: string, lines: readonly string[]): Block => ({
    kind: 'note',
    tone,
    title,
    lines,
  });
  return [
    ...(faults.length === 0 ? [] : [note('exception', say(language, 'record.altered'), faults.map(sayFault))]),
    ...(sheet.demo ? [note('notice', say(language, 'record.demo'), [say(language, 'record.demo-text')])] : []),
    ...(file.seal ? [] : [note('notice', say(language, 'record.no-seal'), [sayNoSeal(facts)])]),
  ];
}

/** The same in a few words, for the head of every page. */
export function bannerOf(facts: RecordFacts): string | undefined {
  const { language, sheet, file, faults } = facts;
  const words = [
    ...(faults.length === 0 ? [] : [say(language, 'record.altered')]),
    ...(sheet.demo ? [say(language, 'record.demo')] : []),
    ...(file.seal ? [] : [say(language, 'record.no-seal')]),
  ];
  return words.length === 0 ? undefined : words.join(' · ');
}

const sayFault = ({ seq, field, message }: RecordFault): string =>
  [...(seq === undefined ? [] : [`#${seq}`]), ...(field === undefined || field === '' ? [] : [field]), message].join(
    ' · ',
  );
