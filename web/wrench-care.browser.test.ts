import { readFileSync } from 'node:fs';
import { checkOf } from '@clampwright/core/line';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { brokenRules } from './testing/broken-rules.ts';
import { type ServedWorkshop, serveWorkshop } from './testing/served-workshop.ts';
import { signIn } from './testing/sign-in.ts';
import { STAND_IN_PORT } from './testing/stand-in-port.ts';

const PIN = '2468';

let workshop: ServedWorkshop;
let bench: BrowserContext;
let page: Page;

beforeAll(async () => {
  workshop = await serveWorkshop();
  bench = await workshop.browser.newContext({ viewport: { width: 820, height: 1180 }, locale: 'en-GB' });
  await bench.addInitScript({ content: STAND_IN_PORT });
  page = await bench.newPage();
  page.setDefaultTimeout(15_000);
});
afterAll(() => workshop.end());

const press = (name: string) => page.getByRole('button', { name, exact: true }).click();
const tells = (text: string | RegExp) => page.getByText(text).first().waitFor();

/** A result at the port of this screen, in the lines of the simulated wrench. */
async function portTells(number: number, torqueNm: number): Promise<void> {
  const line = `r ${number} ${torqueNm} 0 0 0 2026-03-02T06:00:00.000Z 0197f3c1-0000-7000-8000-00000000000${number} KH-REF`;
  await page.evaluate(`wrenchSends(${JSON.stringify(`${line} ${checkOf(line)}\n`)})`);
}

/** A transducer that sends over HTTP, set up by the lead; gives the way to let it tell a torque. */
async function transducer(): Promise<(torque: number) => Promise<unknown>> {
  const api = `${workshop.url}/api/v1`;
  const people = z
    .array(z.looseObject({ id: z.string(), role: z.string() }))
    .parse(await (await bench.request.get(`${api}/people`)).json());
  const lead = people.find(({ role }) => role === 'lead');
  await bench.request.post(`${api}/session`, { data: { personId: lead?.id, pin: PIN } });
  const id = '0197f3c1-0000-7000-8000-0000000000d1';
  await bench.request.post(`${api}/devices`, {
    data: { device: { id, name: 'Bench transducer', way: { kind: 'http' } } },
  });
  const made = await bench.request.post(`${api}/devices/${id}/key`);
  const { key } = z.object({ key: z.string() }).parse(await made.json());
  await bench.request.delete(`${api}/session`);
  return (torque) =>
    bench.request.post(`${api}/pulls`, {
      headers: { authorization: `Bearer ${key}` },
      data: { id: crypto.randomUUID(), torque },
    });
}

const signInAsKeeper = () => signIn(page, 'Per Lindqvist, keeper of the wrenches');

async function downloaded(name: string): Promise<Buffer> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('link', { name }).click()]);
  return readFileSync(await download.path());
}

// One day at the calibration bench, told in order: each step goes on where the one before ended.
describe('the keeper’s day', () => {
  it('begins a calibration beside a reference and is told of each reading at once', async () => {
    await page.goto(`${workshop.url}/wrenches`);
    await page.getByRole('link', { name: 'Middle wrench', exact: true }).click();
    await tells('found off, left good');
    await page.getByRole('link', { name: 'Calibrate', exact: true }).click();
    await page.getByLabel('Reference standard').selectOption({ index: 2 });
    await page.getByLabel('Certificate', { exact: true }).fill('KH-C-0500');
    await press('Begin');
    await tells('Preloading 1 of 1');
    await press('Done');
    await press('Done');
    await tells('Reading 1 of 5.');
    await page.getByLabel('The reference shows').fill('18,5');
    await press('Take the reading');
    await tells(/cannot be read without guessing/);
    await page.getByLabel('The reference shows').fill('18.5');
    await press('Take the reading');
    await tells('outside ± 4 %');
    await press('Take the last one back');
    await tells('Reading 1 of 5.');
    expect(await brokenRules(page)).toEqual([]);
  });

  it('goes on after the browser was closed, with readings from a port and from a table', async () => {
    await page.getByLabel('The reference shows').fill('18.8');
    await press('Take the reading');
    await page.reload();
    await tells('Reading 2 of 5.');
    await page.getByText('Readings live from a device').click();
    await page.getByLabel('Figures of the reference come from').selectOption('a port of this screen');
    await press('Connect a wrench');
    await tells('Listening to the wrench');
    await portTells(1, -18.8);
    await expect.poll(() => page.getByLabel('The reference shows').inputValue()).toBe('18.8');
    await press('Take the reading');
    await tells('Reading 3 of 5.');
    await page.getByText('Take each reading as soon as it is whole').click();
    await portTells(2, 18.8);
    await tells('Reading 4 of 5.');
    await press('Disconnect');
    await page.getByText('Paste readings').first().click();
    await page.locator('textarea').fill('18.8\nnothing');
    await press('Take these readings');
    await tells('Line 2: “nothing” cannot be read. Nothing was taken.');
    const readings = [
      ...Array(2).fill('18.8'),
      ...Array(5).fill('37.6'),
      ...Array(5).fill('113'),
      ...Array(5).fill('188'),
    ];
    await page.locator('textarea').fill(readings.join('\n'));
    await press('Take these readings');
    await tells('What was found');
    expect(await page.getByText('does not conform').count()).toBe(4);
  });

  it('adjusts the wrench, calibrates it as left, and keeps a certificate on paper and for machines', async () => {
    await press('Adjust it, then calibrate as left');
    await press('Done');
    await press('Done');
    const tell = await transducer();
    await page.getByText('Readings live from a device').click();
    await page.getByLabel('Figures of the reference come from').selectOption('Bench transducer');
    await signInAsKeeper();
    await tells('Listening. Pull.');
    await page.getByText('Take each reading as soon as it is whole').click();
    await tell(20);
    await tells('Reading 2 of 5.');
    await page.getByText('Paste readings').first().click();
    const readings = ['20', '40', '120', '200'].flatMap((torque) => Array(5).fill(torque));
    await page.locator('textarea').fill(readings.slice(1).join('\n'));
    await press('Take these readings');
    await tells('How it is left');
    const next = page.getByLabel('Next calibration', { exact: true });
    const proposed = await next
      .locator('option')
      .filter({ hasText: /^Staircase/ })
      .textContent();
    const [, days = '', pulls = ''] = /: ([\d\u202f]+) days, .* or ([\d\u202f]+) pulls$/.exec(proposed ?? '') ?? [];
    await next.selectOption({ label: proposed ?? '' });
    const today = new Date().toISOString().slice(0, 10);
    const day = new Date(Date.parse(today) + Number(days) * 86_400_000).toISOString().slice(0, 10);
    expect(await page.getByLabel('Due on', { exact: true }).inputValue()).toBe(day);
    expect(await page.getByLabel('Or after so many pulls').inputValue()).toBe(pulls);
    await page.getByLabel('Or after so many pulls').fill('0');
    await tells('A whole number from 1 to 10000000.');
    await page.getByLabel('Or after so many pulls').fill('40');
    expect(await next.inputValue()).toBe('by-hand');
    await press('Keep the calibration');
    await tells('The calibration is kept.');
    expect((await downloaded('Certificate KH-C-0500, PDF')).subarray(0, 5).toString()).toBe('%PDF-');
    expect((await downloaded('Certificate KH-C-0500, DCC (XML)')).toString()).toContain(
      'digitalCalibrationCertificate',
    );
  });

  it('opens the recall of what it touched since, the gravest first, and follows each pull', async () => {
    await press('Open a recall');
    await page.getByRole('heading', { name: 'Recall of Middle wrench', level: 1 }).waitFor();
    await tells('No pull of this wrench lies in this time. Nothing is to be re-checked.');
    await page.getByRole('link', { name: 'Recalls', exact: true }).click();
    await page.getByRole('link', { name: 'Recall of Middle wrench' }).last().click();
    const rows = page.locator('.ledger-row');
    await rows.first().waitFor();
    expect(await rows.count()).toBe(42);
    expect(await rows.first().innerText()).toContain('outside: almost certain');
    await page.getByText('with the pulls', { exact: true }).click();
    expect(await brokenRules(page)).toEqual([]);
    await rows.first().getByRole('button').click();
    await page.getByRole('dialog').getByLabel('What was done').selectOption('tightened-again');
    await page.getByRole('dialog').getByRole('button', { name: 'Keep' }).click();
    await tells(/^tightened again, /);
    const csv = (await downloaded('CSV')).toString();
    expect(csv).toContain('tightened again');
    expect(csv.split('\n').filter((line) => line.includes('CC2'))).toHaveLength(42);
  });

  it('sees the interval that each method proposes, and when the wrench is due by day or pulls', async () => {
    await page.goto(`${workshop.url}/wrenches`);
    await page.getByRole('link', { name: 'Middle wrench', exact: true }).click();
    await tells('0 of 40 pulls since the last calibration');
    const rows = page.getByRole('list', { name: 'Calibration interval' }).getByRole('listitem');
    const methods = ['Staircase', 'Control chart', 'Time in use', 'Reliability'];
    expect((await rows.allInnerTexts()).map((text) => methods.find((method) => text.startsWith(method)))).toEqual(
      methods,
    );
    expect(await rows.first().innerText()).toMatch(/\d days or \d+ pulls/);
    expect(await brokenRules(page)).toEqual([]);
  });

  it('registers a wrench with its directions, drive and date of make, and no serial number twice', async () => {
    await page.goto(`${workshop.url}/wrenches`);
    await press('Register a wrench');
    const form = page.getByRole('dialog');
    const fill = (label: string, text: string) => form.getByLabel(label, { exact: true }).fill(text);
    for (const [label, text] of Object.entries({
      Name: 'Yard wrench',
      'Serial number': 'KH-102',
      Class: 'C',
      'Range from': '10',
      'Range to': '100',
      Resolution: '0.1',
      Lever: '400',
      'Date of make': '2026-02-01',
    }))
      await fill(label, text);
    await form.getByLabel('Used', { exact: true }).selectOption('both ways');
    await form.getByLabel('Drive', { exact: true }).selectOption({ label: '□ 12.5\u00a0mm' });
    await form.getByRole('button', { name: 'Register a wrench', exact: true }).click();
    await form.getByText(/KH-102/).waitFor();
    await fill('Serial number', 'KH-190');
    await form.getByRole('button', { name: 'Register a wrench', exact: true }).click();
    await page.getByRole('link', { name: 'Yard wrench', exact: true }).click();
    await tells('□ 12.5\u00a0mm');
    await page.getByRole('link', { name: 'Calibrate', exact: true }).click();
    await page.getByLabel('Reference standard').selectOption({ index: 2 });
    await page.getByLabel('Certificate', { exact: true }).fill('KH-C-0501');
    await press('Begin');
    // preloading, zero and four points, each way
    await tells('of 12');
  });

  it('looks at what was pulled on a joint as capability and on a control chart', async () => {
    await page.goto(`${workshop.url}/joints`);
    await page.getByRole('link', { name: 'Tower flange, 24 bolts M24' }).click();
    await page.getByLabel('Step', { exact: true }).selectOption('stage 1, round 1: Torque, N·m, 24 pulls');
    await tells('Cpk at least, with 95 % confidence');
    await tells('Values between the limits');
    await tells('Values in the order of time');
    expect(await brokenRules(page)).toEqual([]);
  });

  it('is told on Today, and takes the due days along as a calendar', async () => {
    await page.goto(workshop.url);
    await tells(/Middle wrench, KH-102: 41 pulls to be re-checked/);
    const calendar = (await downloaded('As a calendar file')).toString();
    expect(calendar).toMatch(/^BEGIN:VCALENDAR\r\n/);
    expect(calendar).toContain('Calibrate: Old setting wrench\\, KH-007');
    expect(await brokenRules(page)).toEqual([]);
  });
});
