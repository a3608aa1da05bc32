import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { brokenRules } from './testing/broken-rules.ts';
import { type ServedWorkshop, serveWorkshop } from './testing/served-workshop.ts';
import { STAND_IN_PORT } from './testing/stand-in-port.ts';

const PIN = '2468';

let workshop: ServedWorkshop;
let tablet: BrowserContext;
let page: Page;

beforeAll(async () => {
  workshop = await serveWorkshop();
  tablet = await workshop.browser.newContext({ viewport: { width: 820, height: 1180 }, locale: 'en-GB' });
  await tablet.addInitScript({ content: STAND_IN_PORT });
  page = await tablet.newPage();
  page.setDefaultTimeout(15_000);
  await signInAsLead();
});
afterAll(() => workshop.end());

const inPage = (script: string) => page.evaluate(script);
const wrenchSends = (text: string) => inPage(`wrenchSends(${JSON.stringify(text)})`);

/** Asks the API as the person who is signed in at this screen. */
async function ask(path: string, data?: unknown): Promise<unknown> {
  const address = `${workshop.url}/api/v1${path}`;
  const response =
    data === undefined ? await tablet.request.get(address) : await tablet.request.post(address, { data });
  if (!response.ok()) throw new Error(`${path}: ${await response.text()}`);
  return response.json();
}
const idOf = async (path: string, isMeant: (one: Record<string, unknown>) => boolean): Promise<string> => {
  const found = z
    .array(z.looseObject({ id: z.string() }))
    .parse(await ask(path))
    .find(isMeant);
  if (!found) throw new Error(`nothing of the kind at ${path}`);
  return found.id;
};

async function signInAsLead(): Promise<void> {
  await ask('/session', { personId: await idOf('/people', ({ role }) => role === 'lead'), pin: PIN });
}

const BENCH_WRENCH = {
  name: 'Bench wrench',
  delimiter: ';',
  decimalSign: 'comma',
  torqueUnit: 'N·m',
  lines: [{ says: 'result', fields: [{ means: 'mark', text: 'KW' }, { means: 'number' }, { means: 'torque' }] }],
  endOfPull: { by: 'result' },
};
const TYPED_WRENCH = {
  id: '0197f3c1-0000-7000-8000-0000000000a1',
  name: 'Bench wrench',
  serial: 'KH-901',
  type: 'I',
  class: 'C',
  lowestNm: 5,
  highestNm: 200,
  resolutionNm: 0.1,
  angleResolutionDeg: 0.5,
  leverMm: 400,
  connection: { kind: 'typed' },
  calibration: {
    calibratedOn: '2026-01-10',
    dueOn: '2099-01-10',
    certificate: 'KC-26-901',
    by: 'Valley laboratory',
    maximumDeviationPercent: 1,
    expandedUncertaintyPercent: 0.8,
  },
};
const verdict = () => page.getByRole('region', { name: 'Last verdict' });
const next = () => page.getByRole('heading', { name: /^Next position/ });

describe('a wrench at the tablet', () => {
  it('is read at its port by its description, through rubbish and an unplugged cable', async () => {
    await ask('/line-descriptions', BENCH_WRENCH);
    const jobId = await idOf('/jobs?status=open', ({ title }) => String(title).startsWith('Sheave hub'));
    await ask('/toolbox/wrenches', TYPED_WRENCH);
    const wrenchId = TYPED_WRENCH.id;
    await ask(`/jobs/${jobId}/commands`, { command: { kind: 'take-tool', wrenchId, jointRefs: ['J1'] } });
    await page.goto(`${workshop.url}/jobs/${jobId}/work/J1`);
    await page.getByText('Wrench at this screen').click();
    await page.getByRole('combobox', { name: 'Line description' }).selectOption('Bench wrench');
    await page.getByRole('button', { name: 'Connect a wrench' }).click();
    await page.getByText('Listening to the wrench').waitFor();

    const first = await next().textContent();
    await wrenchSends('KW;1;30');
    await wrenchSends(',4\r\n');
    await expect.poll(() => next().textContent()).not.toBe(first);
    expect(await verdict().textContent()).toContain('30.4');

    await wrenchSends('OK\r\nKW;2;30');
    await page.getByText('1 lines could not be read; the last one: OK').waitFor();
    await inPage('wrenchIsPlugged(false)');
    await page.getByText('The wrench is gone.').waitFor();
    await inPage('wrenchIsPlugged(true)');
    await page.getByText('Listening to the wrench').waitFor();
    const second = await next().textContent();
    await wrenchSends('KW;3;30,6\r\n');
    await expect.poll(() => next().textContent()).not.toBe(second);
    expect(await verdict().textContent()).toContain('30.6');
  });

  it('is heard when it types like a keyboard', async () => {
    await page.getByRole('button', { name: 'Disconnect' }).click();
    await page.getByText('Wrench at this screen').click();
    await page.getByRole('combobox', { name: 'Line description' }).selectOption('Bench wrench');
    await page.getByRole('button', { name: 'It types like a keyboard' }).click();
    await page.getByText('Waiting for the wrench to type').waitFor();
    const before = await next().textContent();
    await page.keyboard.type('KW;4;30,8');
    await page.keyboard.press('Enter');
    await expect.poll(() => next().textContent()).not.toBe(before);
    expect(await verdict().textContent()).toContain('30.8');
  });
});

describe('the device screen', () => {
  it('tells what to do where nothing is set up, adds a device, shows its key once and what it sent', async () => {
    await page.goto(`${workshop.url}/wrenches/devices`);
    await page.getByText('No device yet').waitFor();
    await page.getByRole('button', { name: 'Add a device' }).click();
    await page.getByRole('textbox', { name: 'Name' }).fill('Gateway in the yard');
    await page.getByRole('combobox', { name: 'Way in' }).selectOption('http');
    await page.getByRole('button', { name: 'Save the device' }).click();
    await page.getByRole('button', { name: 'Make a key' }).click();
    const key = (await page.locator('.device-key').textContent()) ?? '';
    const headers = { authorization: `Bearer ${key}` };
    await page.request.post(`${workshop.url}/api/v1/pulls`, { headers, data: { torque: 'much' } });
    await page.keyboard.press('Escape');
    await page.getByText('0 taken, 0 known again, 0 refused, 1 unreadable').waitFor();
    await page.getByText('last: {"torque":"much"}').waitFor();
    await expect.poll(() => page.getByText(key).count()).toBe(0);
  });

  it('shows what is understood of a line while it is described', async () => {
    await page.getByRole('button', { name: 'Open Bench wrench' }).click();
    await page.getByRole('textbox', { name: 'Lines to try it on' }).fill('KW;7;85,4\nKW;8;85.4');
    await page.getByRole('cell', { name: 'the result of a pull · 85.4 N·m · number of the pull 7' }).waitFor();
    await page.getByRole('cell', { name: 'field 3 is no figure' }).waitFor();
    await page.getByRole('button', { name: 'Cancel' }).click();
  });

  // WCAG 2.2 AA as far as a program can tell; the rules of axe-core stand outside of this project.
  it('has nothing that axe-core finds', async () => {
    expect(await brokenRules(page)).toEqual([]);
  });
});
