import { say } from '../language/say.ts';
import { sayCautions } from '../language/words.ts';
import type { Language } from '../quantity/language.ts';
import type { Sha256 } from './digest.ts';
import type { Document, Paper } from './document.ts';
import { courseBlocks } from './document-course.ts';
import { doubtBlocks } from './document-doubts.ts';
import { recordFacts } from './document-facts.ts';
import { jointBlocks } from './document-joint.ts';
import { resultBlocks } from './document-result.ts';
import { sealBlocks } from './document-seal.ts';
import { bannerOf, standingBlocks } from './document-standing.ts';
import { toolBlocks } from './document-tools.ts';
import { workBlocks } from './document-work.ts';
import type { RecordFile } from './file.ts';

/**
 * A record as a document to be read: what, where, who, when, with which wrench, limits and their source, each
 * joint as it stands, every attempt, exceptions and doubts, cautions, the seal. What does not verify says so first.
 *
 * @param file  as exported; its first entry opens the job
 * @param paper A4 unless told otherwise
 * @param sha256 of the platform, where it has one that answers at once
 */
export function recordDocument(file: RecordFile, language: Language, paper: Paper = 'A4', sha256?: Sha256): Document {
  const facts = recordFacts(file, language, sha256);
  const { sheet, last } = facts;
  return {
    title: say(language, 'record.title'),
    subject: `${sheet.title}: ${sheet.asset.name}`,
    language,
    paper,
    datedAt: file.seal?.signedAt ?? last.at,
    banner: bannerOf(facts),
    reference: `Clampwright · ${sheet.id} · ${last.seq} · ${last.hash.slice(0, 16)}`,
    blocks: [
      ...standingBlocks(facts),
      ...resultBlocks(facts),
      ...doubtBlocks(facts),
      ...workBlocks(facts),
      ...toolBlocks(facts),
      ...sheet.joints.flatMap((joint) => jointBlocks(facts, joint)),
      ...courseBlocks(facts),
      { kind: 'heading', level: 1, text: say(language, 'record.cautions') },
      { kind: 'note', tone: 'caution', title: say(language, 'record.cautions-title'), lines: sayCautions(language) },
      ...sealBlocks(facts),
    ],
  };
}
