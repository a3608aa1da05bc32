import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { aWrench, jobOnBracket, takeWrench, typedPull, type Workshop, workshop } from '../testing/workshop.ts';

let shop: Workshop;
let jobId: string;
beforeAll(async () => {
  shop = await workshop();
  jobId = await jobOnBracket(shop);
  const technician = await shop.signIn('technician');
  await takeWrench(shop, jobId, aWrench('0100'), technician);
  await shop.ask('POST', `/jobs/${jobId}/commands`, { command: typedPull('first', 42) }, technician);
});
afterAll(() => shop.close());

const record = (form: string) => shop.ask('GET', `/jobs/${jobId}/record.${form}`);

describe('the record of an open job', () => {
  it.each([
    ['json', 'application/json', '{"entries":['],
    ['pdf', 'application/pdf', '%PDF-1.'],
    ['html?language=de&paper=Letter', 'text/html; charset=utf-8', '<html lang="de">'],
    ['csv?language=fr', 'text/csv; charset=utf-8', '42'],
  ])('is given as %s', async (form, type, begin) => {
    const { status, headers, text } = await record(form);
    expect(status).toBe(200);
    expect(headers.get('content-type')).toBe(type);
    expect(text).toContain(begin);
    expect(headers.get('content-disposition')).toMatch(
      /filename="2026-03-02_tower-3_sensor-of-tower-3_[0-9a-f]{8}\.(json|pdf|html|csv)"$/,
    );
  });

  it('lets its page be read in the browser, with its own style and no script', async () => {
    const { headers } = await record('html');
    expect(headers.get('content-disposition')).toMatch(/^inline/);
    expect(headers.get('content-security-policy')).toBe(
      "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'",
    );
  });

  it('refuses a language that is not spoken', async () => {
    expect((await record('pdf?language=tlh')).body).toMatchObject({
      status: 400,
      field: 'language',
      expected: 'one of en, de, fr, es',
    });
  });
});
