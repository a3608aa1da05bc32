import { sayInstant } from '../language/dates.ts';
import { say } from '../language/say.ts';
import type { Block } from './document.ts';
import type { RecordFacts } from './document-facts.ts';
import type { Entry } from './entry.ts';
import type { Seal } from './file.ts';
import { keyFingerprint } from './seal.ts';

/** The command that checks an exported record with no server and no network. */
export const VERIFY_COMMAND = 'clampwright record verify FILE';

/** The seal as text and for a barcode; without one, that there is none. */
export function sealBlocks(facts: RecordFacts): readonly Block[] {
  const { language, file, last } = facts;
  const heading: Block = { kind: 'heading', level: 1, text: say(language, 'record.seal') };
  const { seal } = file;
  if (!seal)
    return [
      heading,
      { kind: 'note', tone: 'notice', title: say(language, 'record.no-seal'), lines: [sayNoSeal(facts)] },
    ];
  return [
    heading,
    {
      kind: 'seal',
      facts: [
        { label: say(language, 'seal.job'), value: last.jobId },
        { label: say(language, 'seal.entries'), value: String(last.seq) },
        { label: say(language, 'seal.head'), value: last.hash },
        { label: say(language, 'seal.key'), value: seal.publicKey },
        { label: say(language, 'seal.fingerprint'), value: keyFingerprint(seal.publicKey) },
        { label: say(language, 'seal.signed-at'), value: `${sayInstant(seal.signedAt, language)} (${seal.signedAt})` },
        { label: say(language, 'seal.signature'), value: seal.signature },
      ],
      barcode: { content: sealBarcode(last, seal), alt: say(language, 'seal.barcode') },
      text: `${say(language, 'seal.barcode')} ${say(language, 'seal.how-to-verify', { command: VERIFY_COMMAND })}`,
    },
  ];
}

export const sayNoSeal = ({ language, state }: RecordFacts): string =>
  say(language, state.status === 'closed' ? 'record.closed-no-seal-text' : 'record.no-seal-text');

/**
 * All that the signature was made over, and the signature, so that paper alone can be checked against the key.
 * In the alphanumeric mode of QR codes: capitals, slashes between the parts; hexadecimal reads the same in lower case.
 *
 * @source ISO/IEC 18004:2015, 7.3.4 (alphanumeric mode)
 */
export const sealBarcode = (last: Entry, seal: Seal): string =>
  ['CLAMPWRIGHT-RECORD', '1', last.jobId, last.seq, last.hash, seal.publicKey, seal.signedAt, seal.signature]
    .join('/')
    .toUpperCase();
