import { describe, expect, it } from 'vitest';
import type { JointContent } from '../joint/joint.ts';
import { aDerivation } from '../joint/testing/a-joint.ts';
import { LANGUAGES } from '../quantity/language.ts';
import type { Block, Document, TableBlock } from './document.ts';
import type { Pull } from './entry.ts';
import { recordFile } from './export.ts';
import type { RecordFile } from './file.ts';
import { recordDocument } from './record-document.ts';
import { keyFingerprint, sealChain } from './seal.ts';
import { done, lead, openedSample, pullOf, type SampleJob, sampleJoint, taking, turnOf } from './testing/sample-job.ts';

const taken = (): SampleJob => done(openedSample(), taking);
const unsealed = ({ entries }: SampleJob): RecordFile => recordFile(entries, {});

const lastPull = ({ entries }: SampleJob): Pull | undefined => {
  const body = entries.at(-1)!.body;
  return body.kind === 'pull' ? body.pull : undefined;
};

/** Every position of both stages, one attempt each. */
function finished(): SampleJob {
  let job = taken();
  for (let n = 0; n < 4; n++) job = done(job, pullOf(10 + n, 100 + n));
  for (let n = 0; n < 4; n++) job = done(job, turnOf(20 + n, 33 + n));
  return job;
}

function sealed(): RecordFile {
  const signed = done(finished(), { kind: 'sign-off', statement: 'all tight' });
  const { entries } = done(signed, { kind: 'close' }, { by: lead });
  return recordFile(entries, {}, sealChain(entries.at(-1)!, new Uint8Array(32).fill(7), '2026-03-01T10:00:00.000Z'));
}

const tables = ({ blocks }: Document, name: string): readonly TableBlock[] =>
  blocks.filter((block): block is TableBlock => block.kind === 'table' && block.name === name);

/** Rows of a table as text. */
const rows = (document: Document, name: string): readonly string[] =>
  tables(document, name).flatMap(({ groups }) =>
    groups.flatMap(({ rows }) => rows.map(({ cells }) => cells.map(({ text }) => text).join(' | '))),
  );

const ofKind = <Kind extends Block['kind']>({ blocks }: Document, kind: Kind) =>
  blocks.filter((block): block is Extract<Block, { kind: Kind }> => block.kind === kind);

const notes = (document: Document, tone: string): readonly string[] =>
  ofKind(document, 'note').flatMap((note) => (note.tone === tone ? [note.title, ...note.lines] : []));

describe('the document of a sealed record', () => {
  const document = recordDocument(sealed(), 'en');

  it('tells what, where, who and when', () => {
    const facts = ofKind(document, 'facts').flatMap(({ facts }) =>
      facts.map(({ label, value }) => `${label}: ${value}`),
    );
    expect(facts).toContain('Opened: 1 March 2026, 08:00:00 UTC, Lead');
    expect(facts).toContain('People: P1 Lead, lead\nP2 Technician, technician');
    expect(facts.some((fact) => fact.startsWith('Calibration: 10 January 2026, due 10 January 2027'))).toBe(true);
  });

  it('keeps the limits as typed beside the converted ones', () => {
    expect(rows(document, 'limits')).toEqual([
      '1 | 1 | torque | 95.0\u00a0N·m | 100.0\u00a0N·m | 105.0\u00a0N·m | 100\u00a0±\u00a05\u00a0N·m | star: 1 3 2 4',
      '2 | 1 | angle | 30.0° | 35.0° | 40.0° | 30\u00a0to\u00a040° | star: 1 3 2 4\nAngle counts from 100.0\u00a0N·m. No faster than 30.0°/s.',
    ]);
  });

  it('lists every pull with its wrench and its hands, and says once where they came from', () => {
    expect(rows(document, 'attempts')).toHaveLength(8);
    expect(tables(document, 'attempts')[0]!.caption).toBe('J1 the joint: every attempt, typed');
    expect(rows(document, 'attempts')[0]).toContain('| W1\u00a0P2 |');
  });

  it('carries the seal as text and in the barcode', () => {
    const file = sealed();
    const [seal] = ofKind(document, 'seal');
    const values = seal!.facts.map(({ value }) => value);
    expect(values).toContain(file.entries.at(-1)!.hash);
    expect(values).toContain(keyFingerprint(file.seal!.publicKey));
    expect(seal!.barcode.content).toBe(
      `CLAMPWRIGHT-RECORD/1/${file.entries[0]!.jobId}/${file.entries.length}/${file.entries.at(-1)!.hash}/${file.seal!.publicKey}/${file.seal!.signedAt}/${file.seal!.signature}`.toUpperCase(),
    );
    // the characters of the alphanumeric mode, ISO/IEC 18004:2015, table 5
    expect(seal!.barcode.content).toMatch(/^[0-9A-Z $%*+\-./:]+$/);
  });

  it('has nothing to warn of but the standing cautions, and is dated by its seal', () => {
    expect(document.banner).toBeUndefined();
    expect(document.datedAt).toBe('2026-03-01T10:00:00.000Z');
    expect(notes(document, 'caution')).toHaveLength(8);
    expect([...notes(document, 'exception'), ...notes(document, 'doubt'), ...notes(document, 'notice')]).toEqual([]);
  });

  it('is the same document every time', () => {
    expect(recordDocument(sealed(), 'en')).toEqual(document);
  });
});

describe('what went wrong', () => {
  it('stays in the table: undone, set aside, moved, with the reason', () => {
    let job = done(taken(), pullOf(10, 120));
    job = done(job, { kind: 'rework', jointRef: 'J1', position: 1, how: 'loosened', reason: 'over by twenty' });
    job = done(job, pullOf(11, 100));
    job = done(job, pullOf(12, 101, { position: 4 }));
    job = done(
      job,
      {
        kind: 'move-pull',
        pullId: job.entries.at(-1)!.id,
        to: { jointRef: 'J1', stage: 1, round: 1, position: 3 },
        reason: 'wrong socket',
      },
      { pulled: lastPull(job) },
    );
    job = done(job, pullOf(13, 100, { position: 2 }));
    job = done(job, { kind: 'set-pull-aside', pullId: job.entries.at(-1)!.id, reason: 'slipped off' });
    const attempts = rows(recordDocument(unsealed(job), 'en'), 'attempts');
    expect(attempts).toHaveLength(5);
    expect(attempts[0]).toContain('over');
    expect(attempts[0]).toContain(
      'Undone, loosened: over by twenty Torque 120.0\u00a0N·m is above the upper limit 105.0\u00a0N·m.',
    );
    expect(attempts.filter((row) => row.includes('Set aside: slipped off'))).toHaveLength(1);
    expect(
      attempts.filter((row) => row.includes('Moved to J1, stage 1, round 1, position 3: wrong socket')),
    ).toHaveLength(1);
    expect(
      attempts.filter((row) => row.includes('Moved here from J1, stage 1, round 1, position 4: wrong socket')),
    ).toHaveLength(1);
  });

  it('sets quietly what no longer stands', () => {
    let job = done(taken(), pullOf(10, 100));
    job = done(job, { kind: 'set-pull-aside', pullId: job.entries.at(-1)!.id, reason: 'slipped off' });
    job = done(job, pullOf(11, 100));
    const [table] = tables(recordDocument(unsealed(job), 'en'), 'attempts');
    expect(table!.groups[0]!.rows.map(({ voice }) => voice)).toEqual(['quiet', 'plain']);
  });

  it('stands at the front: exceptions by name, doubts with their reasons', () => {
    let job = done(taken(), pullOf(10, 120));
    job = done(job, pullOf(11, 110, { position: 2 }));
    job = done(
      job,
      { kind: 'accept', cell: { jointRef: 'J1', stage: 1, round: 1, position: 2 }, reason: 'the maker agrees' },
      { by: lead },
    );
    const document = recordDocument(unsealed(job), 'en');
    expect(notes(document, 'exception')).toEqual([
      'Exceptions',
      'J1, stage 1, round 1, position 2: accepted as it is by Lead, lead. the maker agrees',
    ]);
    expect(notes(document, 'doubt')).toContain(
      'J1, stage 1, round 1, position 1: over. Torque 120.0\u00a0N·m is above the upper limit 105.0\u00a0N·m.',
    );
  });

  it('shows the device’s own time where it differs', () => {
    const job = done(taken(), pullOf(10, 100, { takenAt: '2026-03-01T07:00:00.000Z' }));
    expect(rows(recordDocument(unsealed(job), 'en'), 'attempts')[0]).toContain('device 2026-03-01\u00a007:00:00');
  });
});

describe('the document of an open job', () => {
  const document = recordDocument(unsealed(taken()), 'de');

  it('says on every page that there is no seal', () => {
    expect(document.banner).toBe('Nicht abgeschlossen, kein Siegel');
    expect(ofKind(document, 'seal')).toEqual([]);
    expect(notes(document, 'notice')).toContain('Nicht abgeschlossen, kein Siegel');
  });

  it('says what is not yet done', () => {
    expect(tables(document, 'attempts')[0]!.groups.map(({ title }) => title)).toEqual([
      'Stufe 1, Durchgang 1: Drehmoment (noch offen: 1–4)',
      'Stufe 2, Durchgang 1: Drehwinkel (noch offen: 1–4)',
    ]);
  });
});

describe('a record that was altered', () => {
  it('says so before anything else', () => {
    const file = sealed();
    const entries = file.entries.map((entry, index) =>
      index === 2 ? { ...entry, at: '2026-03-01T08:02:01.000Z' } : entry,
    );
    const document = recordDocument({ ...file, entries }, 'en');
    expect(document.banner).toBe('This record does not verify');
    expect(document.blocks[0]).toMatchObject({ kind: 'note', tone: 'exception', title: 'This record does not verify' });
  });
});

describe('a derived target', () => {
  const fileOf = (numbersSource: JointContent['numbersSource']): RecordFile =>
    unsealed(done(openedSample({ ...sampleJoint, numbersSource }), taking));
  const document = recordDocument(fileOf({ kind: 'derived', text: 'Worked out here', derivation: aDerivation }), 'en');

  it('is printed with what went in, what came out, and that the maker’s figure comes first', () => {
    const facts = ofKind(document, 'facts').flatMap(({ facts }) =>
      facts.map(({ label, value }) => `${label}: ${value}`),
    );
    expect(facts).toContain('Friction in the thread: 0.1');
    expect(facts).toContain('Derived torque: 100.4\u00a0N·m');
    expect(facts).toContain('Least preload after scatter: 34.2\u00a0kN');
    expect(notes(document, 'caution')).toContain('An estimate: the maker’s figure comes first');
  });

  it('is printed step by step with its numbers, and with the own row that was used', () => {
    expect(rows(document, 'derivation')).toEqual(['M_A | F·r | 100.41\u00a0N·m | a source | 54720·0.001835']);
    expect(notes(document, 'notice')).toContain('Own row “Assembly paste”: own test. Entered by Lead on 2 March 2026.');
  });

  it('no longer explains limits that were typed over since', () => {
    const changed = 'The limits were changed after the derivation; it no longer explains them.';
    expect(notes(document, 'caution')).not.toContain(changed);
    const derivation = { ...aDerivation, filled: { ...aDerivation.filled, targetNm: 99 } };
    const later = recordDocument(fileOf({ kind: 'derived', text: 'Worked out here', derivation }), 'en');
    expect(notes(later, 'caution')).toContain(changed);
  });
});

describe('every language', () => {
  it.each(LANGUAGES)('%s has the same blocks and leaves nothing unfilled', (language) => {
    const english = recordDocument(sealed(), 'en');
    const document = recordDocument(sealed(), language);
    expect(document.blocks.map(({ kind }) => kind)).toEqual(english.blocks.map(({ kind }) => kind));
    expect(JSON.stringify(document.blocks).replaceAll(/[{}](?=[",[\]{}:])|(?<=[,[\]{}:]|^)[{}]/g, '')).not.toMatch(
      /\{\w+\}/,
    );
  });
});
