import { type CDPSession, chromium, type Page } from 'playwright-core';
import { median } from './median.ts';
import type { BenchResult } from './result.ts';
import { served } from './served.ts';

/** One frame at 60 frames a second. */
const FRAME_MS = 1000 / 60;
const STEPS = 60;
const ROUNDS = 5;
/** 4 stands in for a cheap tablet; no tablet was at hand. */
const THROTTLES = [1, 4] as const;

const FLAGS = ['--headless', '--no-sandbox', '--disable-gpu', '--disable-background-networking', '--disable-sync'];

const FASTENER = { thread: 'M12', propertyClass: '8.8', threadFriction: 0.12, bearingFriction: 0.12 };
const PAGES = [
  { calculation: 'assembly-torque', input: {} },
  { calculation: 'preload', input: { torqueNm: 80, lowerPreloadN: 39_000, upperPreloadN: 45_000 } },
] as const;

/**
 * Drags the first friction slider to and fro, one step a frame, as a finger would.
 *
 * @returns from each step until its frame was handed over to be shown, ms
 */
const drag = (page: Page, steps: number): Promise<readonly number[]> =>
  page.evaluate(async (count) => {
    const slider = document.querySelector('input[type=range]');
    if (!(slider instanceof HTMLInputElement)) throw new Error('there is no slider');
    const value = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value');
    const waits: number[] = [];
    for (let step = 0; step < count; step++) {
      await new Promise(requestAnimationFrame);
      const began = performance.now();
      value?.set?.call(slider, String(0.1 + 0.005 * (step % 20)));
      slider.dispatchEvent(new Event('input', { bubbles: true }));
      await new Promise<void>((shown) => {
        requestAnimationFrame(() => {
          const { port1, port2 } = new MessageChannel();
          port1.addEventListener('message', () => shown());
          port1.start();
          port2.postMessage(0);
        });
      });
      waits.push(performance.now() - began);
    }
    return waits;
  }, steps);

/** Processor time of the page's own thread so far: script, style, layout and paint, ms. */
async function spentMs(wire: CDPSession): Promise<number> {
  const { metrics } = await wire.send('Performance.getMetrics');
  return 1000 * (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN);
}

async function measured(page: Page, wire: CDPSession, rate: number) {
  await wire.send('Emulation.setCPUThrottlingRate', { rate });
  await drag(page, STEPS);
  const perStepMs: number[] = [];
  const waitsMs: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const before = await spentMs(wire);
    waitsMs.push(...(await drag(page, STEPS)));
    perStepMs.push(((await spentMs(wire)) - before) / STEPS);
  }
  return { workMs: median(perStepMs), paintMs: median(waitsMs) };
}

/** Work of a step of a friction slider on Bench, beside the length of a frame. */
export async function run(): Promise<readonly BenchResult[]> {
  const workshop = await served();
  const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: FLAGS });
  const page = await browser.newPage({ viewport: { width: 820, height: 1180 } });
  const wire = await page.context().newCDPSession(page);
  await wire.send('Performance.enable', { timeDomain: 'threadTicks' });
  const results: BenchResult[] = [];
  for (const { calculation, input } of PAGES) {
    const search = encodeURIComponent(JSON.stringify({ ...FASTENER, ...input }));
    await page.goto(`${workshop.url}/bench/${calculation}?input=${search}`);
    await page.locator('.plot').first().waitFor();
    for (const rate of THROTTLES) {
      const { workMs, paintMs } = await measured(page, wire, rate);
      results.push({
        name: `a step of the friction slider, ${calculation}, processor slowed ${rate} times`,
        ours: workMs,
        peer: FRAME_MS,
        unit: 'ms',
        ratio: workMs / FRAME_MS,
        note: `processor time of the page’s thread (script, style, layout, paint), median of ${ROUNDS} times ${STEPS} steps; from step to frame shown ${paintMs.toFixed(0)} ms by the clock; the peer is one frame`,
      });
    }
  }
  await browser.close();
  await workshop.end();
  return results;
}
