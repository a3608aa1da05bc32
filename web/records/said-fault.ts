import type { RecordFault } from '@clampwright/core/record';

/** Which sentence of the catalogue tells a fault, with what to fill in. */
export interface SaidFault {
  readonly word: 'file' | 'entry-field' | 'entry' | 'seal' | 'trace' | 'fingerprint';
  readonly seq: number;
  readonly field: string;
}

/** A fault of a record as one sentence of the catalogue; what exactly was found stands beside it. */
export function saidFault({ part, seq = 0, field = '' }: RecordFault): SaidFault {
  const word = part === 'entry' && field !== '' ? 'entry-field' : part;
  return { word, seq, field };
}

/** Whether two fingerprints are the same, however they are spaced or written. */
export function isSameFingerprint(a: string, b: string): boolean {
  const plain = (text: string) => text.toLowerCase().replaceAll(/[^0-9a-f]/g, '');
  return plain(a) !== '' && plain(a) === plain(b);
}
