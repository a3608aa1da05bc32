import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type ServedWorkshop, serveWorkshop } from './testing/served-workshop.ts';
import { signIn } from './testing/sign-in.ts';

const TABLET = { width: 820, height: 1180 };

let workshop: ServedWorkshop;
let tablet: BrowserContext;
let page: Page;

beforeAll(async () => {
  workshop = await serveWorkshop();
  tablet = await workshop.browser.newContext({ viewport: TABLET, locale: 'en-GB', acceptDownloads: true });
  page = await tablet.newPage();
  page.setDefaultTimeout(15_000);
});
afterAll(() => workshop.end());

const dialog = () => page.locator('[role=dialog], [role=alertdialog]').last();
const verdict = () => page.getByRole('region', { name: 'Last verdict' });
const next = () => page.getByRole('heading', { name: /^Next position/ });

async function chooseIn(field: string, starting: string): Promise<void> {
  const select = dialog().getByRole('combobox', { name: field });
  const label = await select.locator('option', { hasText: starting }).first().textContent();
  await select.selectOption({ label: label ?? '' });
}

/** Share of the joint that is done, as the bar tells it. */
async function doneShare(): Promise<number> {
  const bar = page.getByRole('progressbar').first();
  return Number(await bar.getAttribute('value')) / Number(await bar.getAttribute('max'));
}

/** Types what the wrench showed and sends it with Enter. */
async function typePull(torque: string, angle?: string): Promise<void> {
  await page.getByRole('textbox', { name: 'Torque shown' }).fill(torque);
  if (angle !== undefined) await page.getByRole('textbox', { name: 'Angle shown' }).fill(angle);
  await page.keyboard.press('Enter');
}

async function pullSimulated(): Promise<void> {
  const before = await next().textContent();
  await page.getByRole('button', { name: 'Pull the simulated wrench' }).click();
  await expect
    .poll(async () => (await next().count()) === 0 || (await next().textContent()) !== before, { timeout: 20_000 })
    .toBe(true);
}

const command = (...args: string[]) =>
  spawnSync(process.execPath, ['cli/bin/clampwright.js', ...args], { encoding: 'utf8' });

// One day, told in order: each step goes on where the one before ended.
describe('a technician’s day on a tablet', () => {
  it('begins on Today, with the jobs in hand and what is due', async () => {
    await page.goto(workshop.url);
    await page.getByRole('heading', { name: 'Today', level: 1 }).waitFor();
    await page.getByText('Invented demonstration').waitFor();
    await page.getByText('Old setting wrench').waitFor();
    await page.getByRole('link', { name: 'Sheave hub after bearing change', exact: true }).click();
  });

  it('shows what the job needs, with the cautions of the joint', async () => {
    await page.getByRole('heading', { name: 'Sheave hub after bearing change', level: 1 }).waitFor();
    await page.getByText('The rope is lifted off and secured before a hub is opened.').waitFor();
    await page.getByText('Thread and head with the workshop’s assembly paste').waitFor();
  });

  it('prints the job in dark ink on white, without what is to be pressed, also from a dark screen', async () => {
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    const ink = await page.evaluate(() => getComputedStyle(document.documentElement).color);
    expect(ink).toBe('rgb(26, 34, 39)');
    expect(await page.getByText('Before you begin', { exact: true }).isVisible()).toBe(true);
    expect(await page.getByRole('button', { name: 'Choose a wrench' }).count()).toBe(0);
    await page.emulateMedia({ media: 'screen', colorScheme: 'light' });
  });

  it('asks who is working, and refuses a wrench with its reasons', async () => {
    await page.getByRole('button', { name: 'Choose a wrench' }).first().click();
    await signIn(page, 'Tamsin Orrell, technician');
    await chooseIn('Wrench', 'Old setting wrench');
    await dialog().getByText('This wrench is refused.').waitFor();
    await dialog()
      .getByText(/Its calibration was due on/)
      .waitFor();
    await dialog().getByText('Stage 2 needs an angle and the wrench shows none.').waitFor();
    expect(await dialog().getByRole('button', { name: 'Take this wrench' }).count()).toBe(0);
  });

  it('takes a wrench that suits, with an adapter', async () => {
    await chooseIn('Wrench', 'Middle wrench');
    await chooseIn('Adapter', 'Open-end adapter 65 mm');
    await dialog().getByText('This wrench suits.').waitFor();
    await dialog().getByRole('button', { name: 'Take this wrench' }).click();
    // Back at the button that was pressed, though the sign-in was asked in between.
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe('Take another wrench');
    await page.getByRole('link', { name: /Work on Hub of sheave 3/ }).click();
  });

  it('shows the figure as this wrench must show it, and says that the adapter is counted in', async () => {
    await next().waitFor();
    expect(await next().textContent()).toContain('1');
    // 30 N·m at the hub; 480 mm lever, 65 mm straight out: 30 × 480 / 545 = 26.4.
    await page.getByText('26.4').first().waitFor();
    await page
      .getByText(/adapter/i)
      .first()
      .waitFor();
  });

  it('judges a typed pull at once and moves on by itself', async () => {
    await typePull('26.5');
    await verdict().getByText('within').waitFor();
    await expect.poll(() => next().textContent()).toContain('4');
  });

  it('refuses a figure it cannot be sure of, and keeps it in the field', async () => {
    await typePull('1,234');
    await page.getByText(/1,234/).first().waitFor();
    expect(await page.getByRole('textbox', { name: 'Torque shown' }).inputValue()).toBe('1,234');
    await expect.poll(() => next().textContent()).toContain('4');
  });

  it('has what went over loosened and repeated, with every attempt in sight', async () => {
    await typePull('34');
    await verdict().getByText('over').first().waitFor();
    await page
      .getByRole('button', { name: /loosened/i })
      .first()
      .click();
    await typePull('26');
    await verdict().getByText('within').waitFor();
    await expect.poll(() => next().textContent()).toContain('2');
  });

  it('comes back to the same place after the browser was closed', async () => {
    const address = page.url();
    await page.close();
    page = await tablet.newPage();
    page.setDefaultTimeout(15_000);
    await page.goto(address);
    await next().waitFor();
    expect(await next().textContent()).toContain('2');
    expect(await doneShare()).toBeCloseTo(2 / 12);
  });

  it('works through both stages with the simulated wrench', async () => {
    for (let pulls = 0; pulls < 16 && (await next().count()) > 0; pulls++) await pullSimulated();
    await expect.poll(doneShare).toBe(1);
  }, 240_000);

  it('is signed off and closed', async () => {
    await page.getByRole('link', { name: 'Sheave hub after bearing change' }).first().click();
    await page.getByRole('button', { name: 'Sign off' }).click();
    await dialog().getByRole('textbox', { name: 'Statement' }).fill('All six screws tightened as ordered.');
    await dialog().getByRole('button', { name: 'Sign off' }).click();
    await page.getByRole('button', { name: 'Close and seal' }).click();
    await dialog().getByRole('button', { name: 'Close and seal' }).click();
    await page.getByText('The job is closed and its record is sealed.').waitFor();
    expect(await page.getByRole('button', { name: 'Sign off' }).count()).toBe(0);
  });

  it('leaves a record that the command line verifies, and tells what was altered when one byte is', async () => {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('link', { name: /Sealed record/ }).click(),
    ]);
    const file = path.join(workshop.folder, 'downloaded.json');
    await download.saveAs(file);
    const whole = command('record', 'verify', file);
    expect(whole.stdout).toContain('WHOLE');
    expect(whole.status).toBe(0);
    writeFileSync(file, readFileSync(file, 'utf8').replace('"text":"26.5"', '"text":"26.6"'));
    const altered = command('record', 'verify', file);
    expect(altered.status).toBe(1);
    expect(altered.stdout).toContain('/body/pull/shown/torque/text now reads "26.6"');
  });
});
