import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { aWrench, jobOnBracket, takeWrench, type Workshop, workshop } from '../testing/workshop.ts';

const MAPPING = {
  name: 'Tester of the valley workshop',
  decimalSign: 'comma',
  headerRow: true,
  position: 'Platz',
  torque: 'Moment',
  torqueUnit: { unit: 'N·m' },
  time: { column: 'Zeit', format: 'dd.MM.yyyy HH:mm:ss', zone: 'Europe/Zurich' },
};

const HEADER = 'Platz;Moment;Zeit';
const GOOD = ['1;42,1;02.03.2026 07:00:10', '2;41,8;02.03.2026 07:00:30', '3;35,0;02.03.2026 07:00:50'];
const BAD = ['4;4.21;02.03.2026 07:01:10', '9;42,0;02.03.2026 07:01:30'];
const file = (...lines: readonly string[]) => `${[HEADER, ...lines].join('\r\n')}\r\n`;

let shop: Workshop;
let jobId: string;
let technician: string;
beforeEach(async () => {
  shop = await workshop();
  jobId = await jobOnBracket(shop);
  technician = await shop.signIn('technician');
  await takeWrench(shop, jobId, aWrench('0100'), technician);
});
afterEach(() => shop.close());

function take(mode: string, text: string | Uint8Array<ArrayBuffer>, mapping: string = JSON.stringify(MAPPING)) {
  const query = new URLSearchParams({ mode, mapping, fileName: 'tester.csv' });
  return shop.askRaw(`/jobs/${jobId}/imports?${query}`, text, technician);
}
const pullsStored = async () => (await shop.ask('GET', `/jobs/${jobId}/entries?after=2`)).body;

describe('taking pulls from a file', () => {
  it('judges them as any other pull, and keeps where they came from', async () => {
    const { status, body } = await take('all-or-nothing', file(...GOOD));
    expect(status).toBe(200);
    expect(body).toMatchObject({
      lines: 3,
      pulls: 3,
      added: 3,
      already: 0,
      refusedCount: 0,
      kept: true,
      verdicts: { within: 2, under: 1 },
    });
    expect(await pullsStored()).toMatchObject([
      {
        body: {
          pull: {
            cell: { position: 1 },
            source: { kind: 'file', detail: 'tester.csv, line 2' },
            takenAt: '2026-03-02T06:00:10.000Z',
            shown: { torque: { text: '42,1' } },
          },
        },
      },
      {},
      { body: { judgement: { verdict: 'under' } } },
    ]);
  });

  it('shows in a preview what would come of it, and keeps nothing', async () => {
    const { body } = await take('preview', file(...GOOD, ...BAD));
    expect(body).toMatchObject({
      lines: 5,
      added: 3,
      refusedCount: 2,
      kept: false,
      preview: [{ line: 2, position: 1, torqueNm: 42.1, verdict: 'within' }, {}, { line: 4, verdict: 'under' }],
    });
    expect(await pullsStored()).toEqual([]);
  });

  it('refuses a bad line by its number and takes the good ones', async () => {
    const { body } = await take('good-lines', file(...GOOD, ...BAD));
    expect(body).toMatchObject({
      added: 3,
      kept: true,
      refused: [
        { line: 5, field: 'torque' },
        { line: 6, field: 'position' },
      ],
    });
    expect(await pullsStored()).toHaveLength(3);
  });

  it('takes nothing where one line is bad, if so asked', async () => {
    const { body } = await take('all-or-nothing', file(...GOOD, ...BAD));
    expect(body).toMatchObject({ refusedCount: 2, kept: false });
    expect(await pullsStored()).toEqual([]);
  });

  it('adds nothing when the same file comes twice', async () => {
    await take('all-or-nothing', file(...GOOD));
    expect((await take('all-or-nothing', file(...GOOD))).body).toMatchObject({ added: 0, already: 3, kept: true });
    expect(await pullsStored()).toHaveLength(3);
  });

  it('takes a mapping that was saved under its name', async () => {
    await shop.ask('POST', '/mappings', MAPPING, technician);
    expect((await shop.ask('GET', '/mappings')).body).toMatchObject([{ name: MAPPING.name, delimiter: 'auto' }]);
    expect((await take('good-lines', file(...GOOD), MAPPING.name)).body).toMatchObject({ added: 3 });
  });

  it('tells those who look at the job', async () => {
    const heard: unknown[] = [];
    shop.deps.listeners.listen(jobId, (event) => heard.push(event));
    await take('good-lines', file(...GOOD));
    expect(heard).toEqual([{ kind: 'entries', afterSeq: 2 }]);
  });

  it.each([
    ['a picture', Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13)],
    ['a file that ends in the middle of its header', 'Platz;Mom'],
    ['an empty file', ''],
  ])('refuses %s and keeps nothing', async (_what, bytes) => {
    const { body } = await take('good-lines', bytes);
    expect(body).not.toMatchObject({ status: 500 });
    expect(JSON.stringify(body)).toMatch(/refused|invalid/);
    expect(await pullsStored()).toEqual([]);
  });

  it('refuses a mapping that is none, naming what is missing', async () => {
    expect((await take('preview', file(...GOOD), '{"name":"half"}')).body).toMatchObject({
      status: 400,
      field: 'decimalSign',
    });
    expect((await take('preview', file(...GOOD), '{"name":')).body).toMatchObject({ status: 400, field: 'mapping' });
    expect((await take('preview', file(...GOOD), 'never saved')).body).toMatchObject({ status: 404, what: 'mapping' });
  });

  it('takes a file that is longer than one batch', async () => {
    const lines = Array.from(
      { length: 600 },
      (_, i) => `${(i % 4) + 1};42,${i % 10};02.03.2026 08:${two(Math.floor(i / 60))}:${two(i % 60)}`,
    );
    expect((await take('good-lines', file(...lines))).body).toMatchObject({ lines: 600, added: 600, refusedCount: 0 });
  });
});

const two = (value: number): string => String(value).padStart(2, '0');

describe('a proposal for a mapping', () => {
  it('finds the columns by their names and says what is to be looked at', async () => {
    const { body } = await shop.askRaw('/mappings/guess?zone=Europe/Zurich', file(...GOOD));
    expect(body).toMatchObject({
      mapping: { decimalSign: 'comma', delimiter: ';', headerRow: true },
      header: ['Platz', 'Moment', 'Zeit'],
    });
  });

  it('refuses what is no text', async () => {
    const { body } = await shop.askRaw('/mappings/guess', Uint8Array.of(0, 1, 2, 3, 0, 0, 0, 255));
    expect(body).toMatchObject({ status: 400 });
  });

  it('refuses a zone that is none', async () => {
    const { body } = await shop.askRaw('/mappings/guess?zone=Kestrelhorn', file(...GOOD));
    expect(body).toMatchObject({ status: 400, field: 'zone' });
  });
});
