import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { brokenRules } from './testing/broken-rules.ts';
import { type ServedWorkshop, serveWorkshop } from './testing/served-workshop.ts';
import { signIn } from './testing/sign-in.ts';

let workshop: ServedWorkshop;
let office: BrowserContext;
let page: Page;

beforeAll(async () => {
  workshop = await serveWorkshop();
  office = await workshop.browser.newContext({ viewport: { width: 1280, height: 1000 }, locale: 'en-GB' });
  page = await office.newPage();
  page.setDefaultTimeout(15_000);
});
afterAll(() => workshop.end());

const open = async (place: string, heading: string) => {
  await page.goto(`${workshop.url}${place}`);
  await page.getByRole('heading', { name: heading, level: 1 }).waitFor();
};
const field = (label: string) => page.getByLabel(label, { exact: true });
/** Whether a text is there, once it had time to come. */
const tells = async (text: string | RegExp) => {
  const found = page.getByText(text).first();
  await found.waitFor();
  return found.isVisible();
};
const dialog = () => page.locator('[role=dialog], [role=alertdialog]').last();

// One day, told in order: each step goes on where the one before ended.
describe('a lead’s day', () => {
  it('writes a joint and is told at the field what cannot be read', async () => {
    await open('/joints', 'Joints');
    await page.getByRole('link', { name: 'Write a joint' }).click();
    await field('Name').fill('Bearing cap, 8 bolts M16');
    await field('Thread').fill('M16');
    await field('Property class').fill('8.8');
    await field('Diameter').fill('180');
    await field('Target').fill('140,5');
    await field('± percent').fill('5');
    await field('Which document or trial').fill('Bench manual, page 3');
    await page.getByText('“140,5” cannot be read without guessing.').waitFor();
    await field('Target').fill('140');
    expect(await tells('140.0 N·m, from 133.0 to 147.0 N·m')).toBe(true);
  });

  it('taps an order of its own on the drawing', async () => {
    await field('Order').selectOption('own');
    for (const position of [1, 5, 3, 7]) {
      await page.getByRole('button', { name: `Position ${position}`, exact: true }).click();
    }
    await page.getByText('Still missing: 2, 4, 6, 8.').waitFor();
    expect(await field('Own order').inputValue()).toBe('1 5 3 7');
    await page.getByRole('button', { name: 'Position 5, number 2 in the order' }).click();
    expect(await field('Own order').inputValue()).toBe('1 3 7');
    await field('Own order').fill('1 5 3 7 2 6 4');
  });

  it('keeps the draft, but cannot release it while a position is missing', async () => {
    await page.getByRole('button', { name: 'Save draft' }).click();
    await signIn(page, 'Ines Falk, lead');
    await page.getByText('saved', { exact: true }).waitFor();
    await page.getByRole('button', { name: 'Release', exact: true }).click();
    await page.getByRole('link', { name: 'Stage 1, round 1:' }).waitFor();
    await page.getByText('Each of the 8 positions must come exactly once.').first().waitFor();
    await field('Own order').fill('1 5 3 7 2 6 4 8');
    expect(await tells('Nothing left to mend')).toBe(true);
  });

  it('is asked before leaving what is not saved', async () => {
    await page.getByRole('link', { name: 'Bench', exact: true }).click();
    await dialog().getByText('Leave without saving?').waitFor();
    await dialog().getByRole('button', { name: 'Cancel' }).click();
    expect(await field('Own order').inputValue()).toBe('1 5 3 7 2 6 4 8');
  });

  it('releases the joint; editing it begins a new revision', async () => {
    await page.getByRole('button', { name: 'Release', exact: true }).click();
    await dialog().getByRole('button', { name: 'Release', exact: true }).click();
    await page.getByText('released', { exact: true }).waitFor();
    await page.getByText('revision 1', { exact: true }).waitFor();
    await page.getByRole('link', { name: 'Begin a new revision' }).click();
    await page.getByText(/Revision 1 is released and stays as it is/).waitFor();
    await field('Target').fill('145');
    await page.getByRole('button', { name: 'Save draft' }).click();
    expect(await tells(/^saved$/)).toBe(true);
  });

  it('makes a job of the same joint twice, at its released revision', async () => {
    await page.getByRole('link', { name: 'Joints' }).first().click();
    await page.getByRole('link', { name: 'Bearing cap, 8 bolts M16' }).click();
    await page.getByText('Revision 2, draft').waitFor({ state: 'attached' });
    await page.getByRole('link', { name: 'Make a job' }).click();
    await field('Title').fill('Bearing caps of drive 2');
    await field('Asset').selectOption({ label: 'another asset, written now' });
    await field('Name of the asset').fill('Drive 2');
    await field('Joint').selectOption({ label: 'Bearing cap, 8 bolts M16' });
    await page.getByRole('button', { name: 'Add this joint' }).click();
    await page.getByRole('button', { name: 'Make the job' }).click();
    await page.getByRole('heading', { name: 'Bearing caps of drive 2', level: 1 }).waitFor();
    await page.getByText('Bearing cap, 8 bolts M16 2').first().waitFor();
    const jobId = page.url().split('/').at(-1) ?? '';
    const job: unknown = await page.evaluate(async (id) => (await fetch(`/api/v1/jobs/${id}`)).json(), jobId);
    expect(job).toMatchObject({
      sheet: {
        asset: { name: 'Drive 2' },
        joints: [
          { ref: 'J1', label: 'Bearing cap, 8 bolts M16', joint: { revision: 1 } },
          { ref: 'J2', label: 'Bearing cap, 8 bolts M16 2', joint: { revision: 1 } },
        ],
      },
    });
  });

  it('takes the good lines of a file, and the same file adds nothing twice', async () => {
    await open('/jobs', 'Jobs');
    await page.getByRole('link', { name: 'New flange bolts on tower 7', exact: true }).click();
    await page.getByRole('heading', { name: 'New flange bolts on tower 7', level: 1 }).waitFor();
    const place = `${new URL(page.url()).pathname}/import`;
    const lines = ['Pos;Drehmoment [Nm];Winkel;Urteil', '2;705,5;31;IO', '14;abc;30;IO'];
    const file = { name: 'shift.csv', mimeType: 'text/csv', buffer: Buffer.from(`${lines.join('\r\n')}\r\n`) };
    const preview = async () => {
      await open(place, 'Pulls from a file');
      await page.locator('input[type=file]').setInputFiles(file);
      expect(await field('Pos is').inputValue()).toBe('position');
      expect(await field('Urteil is').inputValue()).toBe('none');
      await page.getByRole('button', { name: 'Show what this would do' }).click();
      expect(await tells('Line 3')).toBe(true);
    };
    await preview();
    await page.getByRole('button', { name: 'Take in 1 good pull' }).click();
    expect(await tells('1 pull added')).toBe(true);
    await preview();
    expect(await tells('There is nothing new in this file.')).toBe(true);
  });

  it('verifies a record with no network, and is told what exactly was altered', async () => {
    await open('/records', 'Records');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('link', { name: /Winter tyres.*as record file/ }).click(),
    ]);
    const file = path.join(workshop.folder, 'record.json');
    await download.saveAs(file);
    await open('/records/verify', 'Verify a record');
    await office.setOffline(true);
    await page.locator('input[type=file]').setInputFiles(file);
    await page.getByText('Whole', { exact: true }).waitFor();
    const text = readFileSync(file, 'utf8');
    const at = text.indexOf('"torqueNm":1') + '"torqueNm":'.length;
    writeFileSync(file, `${text.slice(0, at)}2${text.slice(at + 1)}`);
    await page.locator('input[type=file]').setInputFiles(file);
    await page.getByText('Altered', { exact: true }).waitFor();
    expect(await tells(/^Entry \d+: \/body\/.*torqueNm is not what was recorded\./)).toBe(true);
    await office.setOffline(false);
  });

  it('works out a wrench setting and finds it again by its link, in the decimals of another language', async () => {
    await open('/bench/wrench-setting', 'Wrench setting');
    await tells('Needed: Torque at the fastener; Lever L. Everything else may be left empty.');
    expect(await field('Lever L').getAttribute('aria-required')).toBe('true');
    expect(await field('Adapter length E').getAttribute('aria-required')).toBeNull();
    await field('Torque at the fastener').fill('80');
    await field('Lever L').fill('400');
    await field('Adapter length E').fill('50');
    // 80 × 400 / 450 = 71.1111
    await page.getByText('71.1111').waitFor();
    await page.waitForURL(/input=/);
    await field('Torque at the fastener').fill('80.5');
    await page.getByText('71.5556').waitFor();
    await page.waitForURL(/80\.5/);
    const link = page.url();
    await open('/workshop', 'Workshop');
    await page.getByText('Deutsch', { exact: true }).click();
    await page.getByRole('heading', { name: 'Werkstatt', level: 1 }).waitFor();
    await page.goto(link);
    await page.getByText('71,5556').waitFor();
    expect(await field('Drehmoment an der Schraube').inputValue()).toBe('80,5');
    await page.goto(`${workshop.url}/workshop`);
    await page.getByText('English', { exact: true }).click();
    await page.getByRole('heading', { name: 'Workshop', level: 1 }).waitFor();
  });

  it('registers a wrench, but leaves calibrations to the keeper', async () => {
    await open('/wrenches', 'Wrenches');
    await page.getByText('Calibrations are entered by the keeper of the wrenches alone.').waitFor();
    await page.getByRole('button', { name: 'Register a wrench' }).click();
    await dialog().getByLabel('Name', { exact: true }).fill('Short wrench');
    await dialog().getByLabel('Serial number').fill('KH-900');
    await dialog().getByLabel('Class', { exact: true }).fill('B');
    await dialog().getByLabel('Range from').fill('4');
    await dialog().getByLabel('Range to').fill('20');
    await dialog().getByLabel('Resolution', { exact: true }).fill('0.1');
    await dialog().getByLabel('Lever').fill('180');
    await dialog().getByRole('button', { name: 'Register a wrench' }).click();
    const row = page.getByRole('listitem').filter({ hasText: 'KH-900' });
    await row.getByText('never calibrated').waitFor();
    await page.getByRole('button', { name: /Ines Falk/ }).click();
    await signIn(page, 'Per Lindqvist, keeper of the wrenches');
    await row.getByRole('button', { name: 'Enter a calibration of Short wrench' }).click();
    await dialog().getByLabel('Certificate').fill('KH-C-0900');
    await dialog().getByLabel('Laboratory or person').fill('Valley laboratory');
    await dialog().getByLabel('Largest deviation').fill('1.1');
    await dialog().getByLabel('Expanded uncertainty').fill('0.8');
    await dialog().getByRole('button', { name: 'Enter a calibration' }).click();
    await expect.poll(() => row.getByText('in calibration').count()).toBe(1);
  });
});

const PLACES = [
  '/joints',
  '/jobs/new',
  '/wrenches',
  '/records',
  '/records/verify',
  '/bench',
  '/bench/verdict',
  '/workshop',
];

/** Colours differ by theme and structure does not, so each theme is judged at one end of the widths. */
describe.each([
  { theme: 'light', judgedAtPx: 360 },
  { theme: 'dark', judgedAtPx: 1440 },
])('the lead’s screens in the $theme', ({ theme, judgedAtPx }) => {
  // WCAG 2.2 AA as far as a program can tell; the rules of axe-core stand outside of this project.
  it.each(PLACES)('%s breaks no rule of WCAG 2.2 AA and never scrolls sideways', async (place) => {
    const context = await workshop.browser.newContext({
      viewport: { width: judgedAtPx, height: 900 },
      bypassCSP: true,
      reducedMotion: 'reduce',
    });
    await context.addInitScript((chosen) => localStorage.setItem('clampwright.theme', chosen), theme);
    const shown = await context.newPage();
    await shown.goto(`${workshop.url}${place}`, { waitUntil: 'networkidle' });
    expect(await brokenRules(shown)).toEqual([]);
    for (const width of [360, 820, 1440]) {
      await shown.setViewportSize({ width, height: 900 });
      const overhangPx = await shown.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect([width, overhangPx]).toEqual([width, Math.min(overhangPx, 0)]);
    }
    await context.close();
  });
});
