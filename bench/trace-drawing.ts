import { chromium, type Page } from 'playwright-core';
import { z } from 'zod';
import { median } from './median.ts';
import type { BenchResult } from './result.ts';
import { type Served, served } from './served.ts';

const SAMPLES = 20_000;
const OPENINGS = 9;
const FLAGS = ['--headless', '--no-sandbox', '--disable-gpu', '--disable-background-networking', '--disable-sync'];
const PIN = '2468';

const named = z.array(z.looseObject({ id: z.string(), name: z.string() }));
const titled = z.array(z.looseObject({ id: z.string(), title: z.string() }));
const toolbox = z.looseObject({ wrenches: named });

/** Free run-down, run-up and a straight line to 85 N·m: what the demo's hub is pulled to. */
function longTrace() {
  const angleDeg = Array.from({ length: SAMPLES }, (_, i) => (200 * i) / (SAMPLES - 1));
  const torqueNm = angleDeg.map((deg, i) => Math.max(1, 1 + 1.4 * (deg - 140)) + 0.1 * Math.sin(12.9898 * i));
  return { angleDeg, torqueNm, timeS: angleDeg.map((_, i) => i / 1000) };
}

/** A pull with a long trace in the demo's hub; the address of its working screen. */
async function pulled(page: Page, { url }: Served): Promise<string> {
  const { request } = page.context();
  const ask = async (path: string, data?: unknown): Promise<unknown> => {
    const answer =
      data === undefined
        ? await request.get(`${url}/api/v1${path}`)
        : await request.post(`${url}/api/v1${path}`, { data });
    if (!answer.ok()) throw new Error(`${path}: ${await answer.text()}`);
    return answer.json();
  };
  const person = named.parse(await ask('/people')).find(({ name }) => name === 'Tamsin Orrell');
  await ask('/session', { personId: person?.id, pin: PIN });
  const job = titled.parse(await ask('/jobs')).find(({ title }) => title.startsWith('Sheave hub'));
  const wrench = toolbox.parse(await ask('/toolbox')).wrenches.find(({ name }) => name === 'Middle wrench');
  const commands = `/jobs/${job?.id}/commands`;
  await ask(commands, { command: { kind: 'take-tool', wrenchId: wrench?.id, jointRefs: ['J1'] } });
  const shown = { torque: { text: '85', unit: 'N·m' }, angle: { text: '60', unit: 'deg' } };
  const pull = { kind: 'record-pull', id: crypto.randomUUID(), jointRef: 'J1', source: { kind: 'simulated' } };
  const told = { takenAt: new Date().toISOString(), shown, shownTorqueNm: 85, shownAngleDeg: 60 };
  await ask(commands, { command: { ...pull, ...told, trace: longTrace() } });
  return `${url}/jobs/${job?.id}/work/J1`;
}

/** From the press until the curve was handed over to be shown, ms. */
async function opened(page: Page): Promise<number> {
  const button = page.getByRole('region', { name: 'Last verdict' }).getByRole('button', { name: /^Curve/ });
  await button.evaluate((pressed: HTMLElement) => {
    const began = performance.now();
    const watcher = new MutationObserver(() => {
      if (!document.querySelector('.trace-canvas canvas')) return;
      watcher.disconnect();
      requestAnimationFrame(() => {
        document.documentElement.dataset['drawnMs'] = String(performance.now() - began);
      });
    });
    watcher.observe(document.body, { childList: true, subtree: true });
    pressed.click();
  });
  await page.locator('html[data-drawn-ms]').waitFor({ state: 'attached' });
  const ms = await page.evaluate(() => Number(document.documentElement.dataset['drawnMs']));
  await page.evaluate(() => delete document.documentElement.dataset['drawnMs']);
  await page.keyboard.press('Escape');
  await page.locator('.trace-canvas').waitFor({ state: 'detached' });
  return ms;
}

/** The same samples as one path on a bare canvas: the least that drawing them costs, ms. */
const bare = (page: Page): Promise<number> =>
  page.evaluate(async ({ angleDeg, torqueNm }) => {
    const began = performance.now();
    const canvas = document.body.appendChild(document.createElement('canvas'));
    canvas.width = 740;
    canvas.height = 444;
    const pen = canvas.getContext('2d');
    pen?.beginPath();
    for (const [i, deg] of angleDeg.entries()) pen?.lineTo(3.7 * deg, 444 - 5 * (torqueNm[i] ?? 0));
    pen?.stroke();
    await new Promise(requestAnimationFrame);
    canvas.remove();
    return performance.now() - began;
  }, longTrace());

/** A curve of 20,000 samples, from the press on its button until it is drawn with its marks. */
export async function run(): Promise<readonly BenchResult[]> {
  const workshop = await served();
  const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: FLAGS });
  const page = await browser.newPage({ viewport: { width: 820, height: 1180 }, locale: 'en-GB' });
  await page.goto(await pulled(page, workshop));
  await opened(page);
  const ours: number[] = [];
  const peer: number[] = [];
  for (let turn = 0; turn < OPENINGS; turn++) {
    ours.push(await opened(page));
    peer.push(await bare(page));
  }
  await browser.close();
  await workshop.end();
  return [
    {
      name: `draw a curve of ${SAMPLES.toLocaleString('en')} samples with its marks, from the press on its button`,
      ours: median(ours),
      peer: median(peer),
      unit: 'ms',
      ratio: median(ours) / median(peer),
      note: `by the clock, median of ${OPENINGS}, samples fetched before; read, dialog, axes, marks and line; the peer strokes the same samples as one path on a bare canvas`,
    },
  ];
}
