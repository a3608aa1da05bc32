import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type ServedWorkshop, serveWorkshop } from './testing/served-workshop.ts';

let workshop: ServedWorkshop;
let office: BrowserContext;
let page: Page;

beforeAll(async () => {
  workshop = await serveWorkshop();
  office = await workshop.browser.newContext({ viewport: { width: 1440, height: 1000 }, locale: 'en-GB' });
  page = await office.newPage();
  page.setDefaultTimeout(15_000);
});
afterAll(() => workshop.end());

const field = (label: string) => page.getByLabel(label, { exact: true });
const dialog = () => page.locator('[role=dialog], [role=alertdialog]').last();

/** Set to a folder to look at the pages. */
const PICTURES = process.env['PLAN_PICTURES'];

async function picture(name: string): Promise<void> {
  if (PICTURES) writeFileSync(path.join(PICTURES, `${name}.png`), await page.screenshot({ fullPage: true }));
}

async function faultless(): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
}

// One flange, told in order: each step goes on where the one before ended.
describe('a flange that is planned', () => {
  it('is compared with three star rounds in the editor, pull by pull', async () => {
    await page.goto(`${workshop.url}/joints`);
    await page.getByRole('link', { name: /Return line flange/ }).click();
    await page.getByText('Targets planned for the neighbours: an estimate').waitFor();
    await page.getByRole('link', { name: 'Begin a new revision' }).click();
    await page.getByRole('heading', { name: 'Plan of the rounds' }).waitFor();
    await field('Rounds').fill('1');
    const mine = page.getByRole('region', { name: 'This plan', exact: true });
    expect(await mine.getByText('8', { exact: true }).count()).toBeGreaterThan(0);
    await page.locator('#plan').getByRole('button', { name: 'One back' }).click();
    await page.locator('#plan').getByText('Pull 23 of 24').waitFor();
    await picture('plan');
    await faultless();
  });

  it('is taken over into its stage, saved and released', async () => {
    await page.getByRole('button', { name: 'Take this plan over into stage 1' }).click();
    await page.getByText('Taken over: the rounds of stage 1 are those of the plan.').waitFor();
    await page.getByRole('button', { name: 'Save draft' }).click();
    await dialog().getByRole('combobox', { name: 'Name' }).selectOption({ label: 'Ines Falk, lead' });
    await dialog().getByRole('textbox', { name: 'PIN' }).fill('2468');
    await dialog().getByRole('button', { name: 'Begin' }).click();
    await page.getByText('saved', { exact: true }).waitFor();
    await page.getByRole('button', { name: 'Release', exact: true }).click();
    await dialog().getByRole('button', { name: 'Release', exact: true }).click();
    await page.getByRole('link', { name: 'Make a job' }).waitFor();
  });

  it('becomes a job that carries the plan, with the forces to be seen while it is worked on', async () => {
    await page.getByRole('link', { name: 'Make a job' }).click();
    await field('Title').fill('Return line');
    await field('Asset').selectOption({ label: 'another asset, written now' });
    await field('Name of the asset').fill('Return line');
    await page.getByRole('button', { name: 'Make the job' }).click();
    await page.getByRole('heading', { name: 'Return line', level: 1 }).waitFor();
    const jobId = page.url().split('/').at(-1) ?? '';
    const told: unknown = await page.evaluate(async (id) => (await fetch(`/api/v1/jobs/${id}`)).json(), jobId);
    expect(told).toMatchObject({
      sheet: { joints: [{ joint: { content: { neighbours: { plan: { stage: 1, planned: { pulls: 8 } } } } } }] },
    });
    await page.goto(`${workshop.url}/jobs/${jobId}/work/J1`);
    await page.getByText('Show the forces predicted so far').click();
    await page.getByText(/Estimated from the pulls/).waitFor();
    await picture('work');
    await faultless();
  });
});
