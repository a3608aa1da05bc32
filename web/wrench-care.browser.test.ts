import { readFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type ServedWorkshop, serveWorkshop } from './testing/served-workshop.ts';

const PIN = '2468';

let workshop: ServedWorkshop;
let bench: BrowserContext;
let page: Page;

beforeAll(async () => {
  workshop = await serveWorkshop();
  bench = await workshop.browser.newContext({ viewport: { width: 820, height: 1180 }, locale: 'en-GB' });
  page = await bench.newPage();
  page.setDefaultTimeout(15_000);
});
afterAll(() => workshop.end());

const press = (name: string) => page.getByRole('button', { name, exact: true }).click();
const tells = (text: string | RegExp) => page.getByText(text).first().waitFor();

/** WCAG 2.2 AA as far as a program can tell; the rules of axe-core stand outside of this project. */
async function faultsInSight(): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
    .analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}

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
    expect(await faultsInSight()).toEqual([]);
  });

  it('goes on after the browser was closed, with readings from a table', async () => {
    await page.getByLabel('The reference shows').fill('18.8');
    await press('Take the reading');
    await page.reload();
    await tells('Reading 2 of 5.');
    await page.getByText('Paste readings').first().click();
    await page.locator('textarea').fill('18.8\nnothing');
    await press('Take these readings');
    await tells('Line 2: “nothing” cannot be read. Nothing was taken.');
    const readings = [
      ...Array(4).fill('18.8'),
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
    await page.getByText('Paste readings').first().click();
    const readings = ['20', '40', '120', '200'].flatMap((torque) => Array(5).fill(torque));
    await page.locator('textarea').fill(readings.join('\n'));
    await press('Take these readings');
    await tells('How it is left');
    await press('Keep the calibration');
    const dialog = page.getByRole('dialog');
    await dialog
      .getByRole('combobox', { name: 'Name' })
      .selectOption({ label: 'Per Lindqvist, keeper of the wrenches' });
    await dialog.getByRole('textbox', { name: 'PIN' }).fill(PIN);
    await dialog.getByRole('button', { name: 'Begin' }).click();
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
    expect(await faultsInSight()).toEqual([]);
    await rows.first().getByRole('button').click();
    await page.getByRole('dialog').getByLabel('What was done').selectOption('tightened-again');
    await page.getByRole('dialog').getByRole('button', { name: 'Keep' }).click();
    await tells(/^tightened again, /);
    const csv = (await downloaded('CSV')).toString();
    expect(csv).toContain('tightened again');
    expect(csv.split('\n').filter((line) => line.includes('CC2'))).toHaveLength(42);
  });

  it('is told on Today, and takes the due days along as a calendar', async () => {
    await page.goto(workshop.url);
    await tells(/Middle wrench, KH-102: 41 pulls to be re-checked/);
    const calendar = (await downloaded('As a calendar file')).toString();
    expect(calendar).toMatch(/^BEGIN:VCALENDAR\r\n/);
    expect(calendar).toContain('Calibrate: Old setting wrench\\, KH-007');
    expect(await faultsInSight()).toEqual([]);
  });
});
