import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { keyFingerprint, recordFileSchema } from '@clampwright/core/record';
import { beforeAll, describe, expect, it } from 'vitest';
import { demoJobs, exported } from './testing/demo-jobs.ts';
import { freshPlace, makePlace } from './testing/place.ts';

let sealed: Buffer;
let unsealed: Buffer;
let sealKey: string;
let workshopKey: string;

beforeAll(async () => {
  const place = makePlace();
  const { closed, open } = await demoJobs(place);
  await exported(place, closed, '--out', 'closed.json');
  await exported(place, open, '--out', 'open.json');
  sealed = readFileSync(path.join(place.folder, 'closed.json'));
  unsealed = readFileSync(path.join(place.folder, 'open.json'));
  sealKey = recordFileSchema.parse(JSON.parse(sealed.toString())).seal?.publicKey ?? '';
  workshopKey = (await place.run(['record', 'key', '--json', '--data', place.data])).stdout;
  place.remove();
});

async function verified(bytes: Buffer, ...args: readonly string[]) {
  const place = freshPlace();
  const ran = await place.run(['record', 'verify', place.file('record.json', bytes), ...args]);
  return { ...ran, place };
}

/** The character in the first group becomes a neighbour of its kind. */
function altered(bytes: Buffer, where: RegExp): Buffer {
  const [at] = new RegExp(where.source, 'sd').exec(bytes.toString('latin1'))?.indices?.[1] ?? [];
  if (at === undefined) throw new Error(`the record holds ${where.source}`);
  const copy = Buffer.from(bytes);
  copy[at]! += '9f'.includes(String.fromCharCode(copy[at]!)) ? -1 : 1;
  return copy;
}

describe('a record of the closed job', () => {
  it('is whole in an empty folder, and nothing is made there', async () => {
    const { code, stdout, place } = await verified(sealed);
    expect(code).toBe(0);
    expect(stdout).toMatch(/^WHOLE/);
    expect(stdout).toContain(keyFingerprint(sealKey));
    expect(readdirSync(place.folder)).toEqual(['record.json']);
    expect(readdirSync(place.home)).toEqual([]);
  });

  it.each([
    [
      'a reading',
      /"reading":\{[^}]*"torqueNm":(\d)/,
      /Entry \d+ \(pull\): \/body\/pull\/reading\/torqueNm now reads \d/,
    ],
    ['what the wrench showed', /"torque":\{"text":"(\d)/, /Entry \d+ \(pull\): \/body\/pull\/shown\/torque\/text now/],
    ['a verdict', /"verdict":"w(i)thin"/, /judgement\.verdict is not as a record has it: “wjthin”/],
    ['a limit', /"lowerNm":(\d)/, /Entry 1 \(opened\): \S+\/lowerNm now reads/],
    ['who it was', /"name":"(T)amsin Orrell"/, /Entry \d+ \(.+\): \/by\/name now reads "Uamsin Orrell", which is not/],
    ['when it was', /"at":"2\d(\d)/, /Entry 1 \(opened\): \/at now reads "2/],
    ['the statement at the end', /All (f)our wheels/, /\(signed-off\): \/body\/statement now reads "All eour wheels/],
    ['an entry’s hash', /"hash":"(.)/, /Entry 1 \(opened\): \/hash now reads/],
    ['a trace', /"traces":.*?"torqueNm":\[(\d)/, /The trace of pull [0-9a-f-]+ was altered/],
    ['the signature', /"signature":"(.)/, /The signature does not fit/],
    ['the key', /"publicKey":"(.)/, /The signature does not fit/],
    ['a fingerprint', /"fingerprints":\[\{"[^"]*":"(.)/, /The fingerprint of \S+ in entry 1 was altered/],
    ['the format', /"(c)lampwright-record"/, /format is not as a record has it/],
    ['the punctuation', /"fingerprints"(:)/, /The file stops being JSON at character \d+/],
  ])('with one byte of %s changed is not, and it is said what', async (_, where, said) => {
    const { code, stdout } = await verified(altered(sealed, where));
    expect(code).toBe(1);
    expect(stdout).not.toMatch(/^WHOLE/);
    expect(stdout).toMatch(said);
  });

  it('tells programs the entry and the field', async () => {
    const { code, stdout } = await verified(altered(sealed, /All (f)our wheels/), '--json');
    expect(code).toBe(1);
    expect(JSON.parse(stdout)).toMatchObject({
      whole: false,
      sealed: true,
      faults: [{ part: 'entry', seq: expect.any(Number), field: '/body/statement' }],
    });
  });

  it('with any one byte changed is never whole', async () => {
    const place = freshPlace();
    for (const share of [0, 0.13, 0.37, 0.5, 0.71, 0.93, 1]) {
      const bytes = Buffer.from(sealed);
      const at = Math.round(share * (bytes.length - 1));
      bytes[at]! ^= 1;
      const { code } = await place.run(['record', 'verify', place.file('record.json', bytes)]);
      expect({ at, code }).toEqual({ at, code: 1 });
    }
  });

  it('is not whole with bytes that only read alike', async () => {
    const wrong = Buffer.concat([sealed.subarray(0, -1), Buffer.from([0xff, 0x0a])]);
    expect((await verified(wrong)).stdout).toContain('not UTF-8');
  });

  it.each([
    ['half of it', (bytes: Buffer) => bytes.subarray(0, bytes.length / 2), 'ALTERED'],
    ['all but the last byte', (bytes: Buffer) => bytes.subarray(0, -1), 'ALTERED'],
    ['nothing', () => Buffer.alloc(0), 'NOT A RECORD'],
    ['another JSON', () => Buffer.from('{"value": 1}'), 'NOT A RECORD'],
    ['a workbook', () => Buffer.from([0x50, 0x4b, 3, 4, 0, 0, 0xff]), 'NOT A RECORD'],
  ])('of which %s is left is told as such', async (_, left, standing) => {
    const { code, stdout } = await verified(left(sealed));
    expect(code).toBe(1);
    expect(stdout.startsWith(standing)).toBe(true);
    expect(stdout).toContain('✗');
  });

  it('is held against the key that its reader knows', async () => {
    const fingerprint = keyFingerprint(sealKey);
    expect((await verified(sealed, '--key', fingerprint)).code).toBe(0);
    expect((await verified(sealed, '--key', fingerprint.replaceAll(' ', '').toUpperCase())).code).toBe(0);
    const other = await verified(sealed, '--key', 'b9dd c41f 0319 e654 a8b8 4d61 8165 0000');
    expect(other.code).toBe(1);
    expect(other.stdout).toMatch(/^WHOLE, BUT SEALED BY ANOTHER KEY/);
  });

  it('shows the key that the workshop shows', async () => {
    expect(JSON.parse(workshopKey)).toEqual({
      algorithm: 'Ed25519',
      publicKey: sealKey,
      fingerprint: keyFingerprint(sealKey),
    });
  });
});

describe('a record without a seal', () => {
  it('is consistent and proves nothing', async () => {
    const { code, stdout } = await verified(unsealed);
    expect(code).toBe(3);
    expect(stdout).toMatch(/^NOT SEALED/);
  });

  it('is not taken for one that was sealed with a known key', async () => {
    expect((await verified(unsealed, '--key', keyFingerprint(sealKey))).code).toBe(1);
  });
});

it('tells a file that is not there, and a folder', async () => {
  const place = freshPlace();
  for (const name of ['missing.json', '.']) {
    const { code, stdout, stderr } = await place.run(['record', 'verify', name]);
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
    expect(stderr).toContain(`${name} cannot be read`);
  }
});
