import { createHash } from 'node:crypto';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exportRecord } from './export.ts';
import { publicKeyOf, sealChain } from './seal.ts';
import { done, openedSample, pullOf, taking, testId, turnOf } from './testing/sample-job.ts';
import { verifyRecord } from './verify.ts';

const key = Uint8Array.from({ length: 32 }, (_, i) => i * 3 + 1);
const trace = { timeS: [0, 0.1, 0.2], angleDeg: [0, 1, 2], torqueNm: [1, 50, 100] };

function closedRecord(): string {
  let job = done(openedSample(), taking);
  job = done(job, pullOf(200, 100, { trace }));
  for (const n of [201, 202, 203]) job = done(job, pullOf(n, 100));
  for (const n of [210, 211, 212, 213]) job = done(job, turnOf(n, 35));
  job = done(done(job, { kind: 'sign-off', statement: 'Done, café “ok”.' }), { kind: 'close' });
  const seal = sealChain(job.entries.at(-1)!, key, '2026-03-01T09:00:00.000Z');
  return exportRecord(job.entries, { [testId(200)]: trace }, seal);
}
const text = closedRecord();

const altered = (from: string, to: string): string => {
  expect(text).toContain(from);
  return text.replace(from, to);
};

describe('a record', () => {
  it('that nobody touched is whole', () => {
    expect(verifyRecord(text)).toMatchObject({
      whole: true,
      sealed: true,
      faults: [],
      title: 'Sample job',
      entryCount: 12,
      signedAt: '2026-03-01T09:00:00.000Z',
    });
  });

  it('of an open job is whole but not sealed', () => {
    const open = openedSample();
    expect(verifyRecord(exportRecord(open.entries, {}))).toMatchObject({ whole: true, sealed: false });
  });

  it('tells the entry and the field of an altered reading', () => {
    const { faults } = verifyRecord(altered('"shown":{"torque":{"text":"100"', '"shown":{"torque":{"text":"101"'));
    expect(faults).toContainEqual({
      part: 'entry',
      seq: 3,
      field: '/body/pull/shown/torque/text',
      message: 'Entry 3 (pull): /body/pull/shown/torque/text now reads "101", which is not what was recorded.',
    });
  });

  it('tells an altered time, name and reason', () => {
    expect(verifyRecord(altered('Done, café', 'Done, cafe')).faults[0]).toMatchObject({
      seq: 11,
      field: '/body/statement',
    });
    expect(verifyRecord(altered('"name":"Technician"', '"name":"Technicien"')).faults[0]).toMatchObject({
      seq: 2,
      field: '/by/name',
    });
  });

  it('tells an altered trace', () => {
    expect(verifyRecord(altered('"torqueNm":[1,50,100]', '"torqueNm":[1,51,100]')).faults).toEqual([
      { part: 'trace', field: testId(200), message: `The trace of pull ${testId(200)} was altered.` },
    ]);
  });

  it('tells an altered signature and an altered hash', () => {
    const signature = /"signature":"(.)/.exec(text)![1]!;
    expect(
      verifyRecord(altered(`"signature":"${signature}`, `"signature":"${signature === 'a' ? 'b' : 'a'}`)).faults[0],
    ).toMatchObject({ part: 'seal' });
    const hash = /"hash":"(.)/.exec(text)![1]!;
    expect(verifyRecord(altered(`"hash":"${hash}`, `"hash":"${hash === 'a' ? 'b' : 'a'}`)).faults[0]).toMatchObject({
      part: 'entry',
      seq: 1,
    });
  });

  it('tells where the file stops being JSON', () => {
    const { faults } = verifyRecord(altered('"kind":"tool-taken"', '"kind":"tool-taken'));
    expect(faults[0]).toMatchObject({ part: 'file', field: expect.stringContaining('entries[1].body') });
  });

  it('tells a file that was cut short, and white space that was put in', () => {
    expect(verifyRecord(text.slice(0, text.length / 2)).faults[0]).toMatchObject({ part: 'file' });
    expect(verifyRecord(altered('"jobId":', '"jobId": ')).faults[0]).toMatchObject({
      part: 'file',
      message: expect.stringContaining('canonical form'),
    });
  });

  it('tells a name given twice and half of a character', () => {
    const twice = altered('"status":"released"', '"status":"draft","status":"released"');
    expect(verifyRecord(twice).faults[0]).toMatchObject({ part: 'file', message: expect.stringContaining('twice') });
    const half = String.raw`Done, caf\ud83d`;
    expect(verifyRecord(altered('Done, café', half)).faults[0]).toMatchObject({
      part: 'file',
      field: 'entries[10].body.statement',
    });
  });

  it('is whole whatever characters people wrote', () => {
    const odd = 'a bell \u0007, a delete \u007f, a line end \u0085, a face \u{1f600}, a path C:\\udata';
    const { entries } = done(openedSample(), { kind: 'note', text: odd });
    expect(verifyRecord(exportRecord(entries, {}))).toMatchObject({ whole: true, faults: [] });
  });

  it('is verified alike with the digest of the platform', () => {
    const platform = (data: string) => createHash('sha256').update(data).digest('hex');
    expect(verifyRecord(text, platform)).toEqual(verifyRecord(text));
    const touched = altered('"torqueNm":[1,50,100]', '"torqueNm":[1,51,100]');
    expect(verifyRecord(touched, platform)).toEqual(verifyRecord(touched));
  });

  it('tells a seal that was taken away, and one that was made with another key', () => {
    const { seal: _, ...unsealed } = JSON.parse(text);
    expect(verifyRecord(`${JSON.stringify(unsealed)}\n`).faults).toContainEqual({
      part: 'seal',
      message: 'The job was closed, but the seal is missing.',
    });
    const other = publicKeyOf(key.map((byte) => byte + 1));
    expect(verifyRecord(altered(publicKeyOf(key), other)).faults[0]).toMatchObject({ part: 'seal' });
  });

  it('tells an entry that was taken out', () => {
    const file = JSON.parse(text);
    file.entries.splice(4, 1);
    file.fingerprints.splice(4, 1);
    expect(verifyRecord(`${JSON.stringify(file)}\n`).faults[0]).toMatchObject({ part: 'entry', seq: 5 });
  });

  it('is never whole with any one byte altered', () => {
    const bytes = new TextEncoder().encode(text);
    const at = fc.integer({ min: 0, max: bytes.length - 1 });
    fc.assert(
      fc.property(at, fc.integer({ min: 1, max: 255 }), (index, flip) => {
        const touched = Uint8Array.from(bytes);
        touched[index] = touched[index]! ^ flip;
        const { whole, faults } = verifyRecord(new TextDecoder().decode(touched));
        expect(whole).toBe(false);
        expect(faults.length).toBeGreaterThan(0);
      }),
      { numRuns: 150 },
    );
  });
});
