import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { brokenRules } from './testing/broken-rules.ts';
import { type ServedWorkshop, serveWorkshop } from './testing/served-workshop.ts';

const PIN = '2468';

let workshop: ServedWorkshop;
let tablet: BrowserContext;
let page: Page;
let work: string;

const jobsSchema = z.array(z.looseObject({ id: z.string(), title: z.string() }));
const peopleSchema = z.array(z.looseObject({ id: z.string(), name: z.string() }));
const toolboxSchema = z.looseObject({ wrenches: z.array(z.looseObject({ id: z.string(), name: z.string() })) });

async function ask<T>(schema: z.ZodType<T>, path: string, data?: unknown): Promise<T> {
  const url = `${workshop.url}/api/v1${path}`;
  const answer = data === undefined ? await tablet.request.get(url) : await tablet.request.post(url, { data });
  const body: unknown = await answer.json();
  if (!answer.ok()) throw new Error(JSON.stringify(body));
  return schema.parse(body);
}

/** The demo's hub with the simulated wrench in hand, and two sound pulls on it. */
beforeAll(async () => {
  workshop = await serveWorkshop();
  tablet = await workshop.browser.newContext({
    viewport: { width: 820, height: 1180 },
    locale: 'en-GB',
    bypassCSP: true,
    reducedMotion: 'reduce',
  });
  page = await tablet.newPage();
  page.setDefaultTimeout(15_000);
  const person = (await ask(peopleSchema, '/people')).find(({ name }) => name === 'Tamsin Orrell');
  await ask(z.unknown(), '/session', { personId: person?.id, pin: PIN });
  const job = (await ask(jobsSchema, '/jobs')).find(({ title }) => title === 'Sheave hub after bearing change');
  const wrench = (await ask(toolboxSchema, '/toolbox')).wrenches.find(({ name }) => name.startsWith('Middle wrench'));
  const command = { kind: 'take-tool', wrenchId: wrench?.id, jointRefs: ['J1'] };
  await ask(z.unknown(), `/jobs/${job?.id}/commands`, { command });
  for (const fault of ['none', 'none', 'jerked'])
    await ask(z.unknown(), `/jobs/${job?.id}/simulate`, { jointRef: 'J1', fault });
  work = `${workshop.url}/jobs/${job?.id}/work/J1`;
});
afterAll(() => workshop.end());

const dialog = () => page.getByRole('dialog', { name: /^Curve of position/ });
const read = async () => (await dialog().locator('.trace-read').textContent()) ?? '';

// Told in order: each step goes on where the one before ended.
describe('the curve of a pull', () => {
  it('stands behind a doubtful verdict, with the reason in words', async () => {
    await page.goto(work);
    const last = page.getByRole('region', { name: 'Last verdict' });
    await last.getByText(/Jerked:/).waitFor();
    await last.getByRole('button', { name: /^Curve of position/ }).click();
    await dialog().locator('canvas').waitFor();
    await dialog().getByText('Grey: 2 earlier accepted pulls on this step.').waitFor();
  });

  it('marks snug and what speaks against the pull, each by number, shape and word', async () => {
    const key = dialog().getByRole('list', { name: 'Marks on the curve' });
    expect(await key.getByText('Snug', { exact: true }).count()).toBe(1);
    expect(await key.getByText('Speaks against it').count()).toBe(1);
    expect(await key.getByText(/^Jerked: .*even\./).count()).toBe(1);
  });

  it('is read off by arrow keys, sample by sample', async () => {
    await dialog().getByRole('slider', { name: 'Read-off along the curve' }).focus();
    await page.keyboard.press('Home');
    const first = await read();
    await page.keyboard.press('PageUp');
    const later = await read();
    expect(Number.parseFloat(later)).toBeGreaterThan(Number.parseFloat(first));
    await page.keyboard.press('ArrowLeft');
    expect(await read()).not.toBe(later);
  });

  it('shows a part of it large and the whole again', async () => {
    const inked = () =>
      dialog()
        .locator('canvas')
        .evaluate((canvas: HTMLCanvasElement) => canvas.toDataURL());
    const whole = await inked();
    await dialog().getByRole('button', { name: 'Nearer' }).click();
    expect(await inked()).not.toBe(whole);
    await dialog().getByRole('button', { name: 'Whole curve' }).click();
    await expect.poll(inked).toBe(whole);
  });

  it.each(['light', 'dark'])('meets WCAG 2.2 AA in the %s', async (theme) => {
    await page.evaluate((chosen) => {
      document.documentElement.dataset['theme'] = chosen;
    }, theme);
    expect(await brokenRules(page)).toEqual([]);
  });
});
