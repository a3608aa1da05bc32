import { setTimeout as pause } from 'node:timers/promises';
import { chromium } from 'playwright-core';
import { z } from 'zod';
import { echoed } from './bare-echo.ts';
import { eventsOf } from './events-of.ts';
import type { BenchResult } from './result.ts';
import { type StreamingWorkshop, streamingWorkshop } from './streaming-workshop.ts';
import { now, pullId, type StreamingWrench, serialOf, streamAll, wrenchesOnPtys } from './wrench-streams.ts';

const SAMPLES = 100;
/** Wrenches with the pulls of each, one a second: far more often than a hand pulls. */
const RUNS = [
  { count: 1, pulls: 20 },
  { count: 10, pulls: 12 },
  { count: 100, pulls: 8 },
] as const;
const SETTLING_MS = 2000;
const AGAIN_MS = 50;
const FLAGS = ['--headless', '--no-sandbox', '--disable-gpu', '--disable-background-networking', '--disable-sync'];

type Times = ReadonlyMap<string, number>;

/** From the last byte on the wire to the verdict, beside a bare echo of the line from the same terminals. */
export async function run(): Promise<readonly BenchResult[]> {
  const results: BenchResult[] = [];
  for (const { count, pulls } of RUNS) {
    const wrenches = await wrenchesOnPtys(count);
    const peer = await peerOf(wrenches, pulls);
    const workshop = await streamingWorkshop(wrenches, 1);
    const ours = await verdictsAt(workshop, wrenches, pulls);
    results.push(...besides(`verdict at a listener, ${count} streaming`, ours, peer, count * pulls));
    const shown = await shownInBrowser(workshop, wrenches, pulls);
    results.push(...besides(`verdict on a page in Chromium, ${count} streaming`, shown, peer, pulls));
    await workshop.end();
    for (const { pty } of wrenches) await pty.close();
  }
  return results;
}

async function peerOf(wrenches: readonly StreamingWrench[], pulls: number): Promise<readonly number[]> {
  const sent = new Map<string, number>();
  const heard = await echoed(wrenches, async () => {
    await streamAll(wrenches, { run: 'peer', pulls, samples: SAMPLES }, sent);
    await pause(SETTLING_MS);
  });
  return waits(sent, heard);
}

const waits = (sent: Times, heard: Times): readonly number[] =>
  [...sent].flatMap(([id, sentMs]) => {
    const heardMs = heard.get(id);
    return heardMs === undefined ? [] : [heardMs - sentMs];
  });

const eventSchema = z.looseObject({ kind: z.string(), afterSeq: z.number().optional() });
const entriesSchema = z.array(
  z.looseObject({ id: z.string(), body: z.looseObject({ judgement: z.looseObject({ verdict: z.string() }) }) }),
);

/** As a page does: hears that there is more, fetches it, and has the verdict in hand. */
async function verdictsAt(
  { url, cookie, jobIds }: StreamingWorkshop,
  wrenches: readonly StreamingWrench[],
  pulls: number,
) {
  const heard = new Map<string, number>();
  const ends = await Promise.all(
    jobIds.map((jobId) => {
      // As a page does, it asks again where a crowded machine let a connection drop; the wait counts.
      const ask = (afterSeq: number): Promise<Response> =>
        fetch(`${url}/api/v1/jobs/${jobId}/entries?after=${afterSeq}`, { headers: { cookie } }).catch(() =>
          pause(AGAIN_MS).then(() => ask(afterSeq)),
        );
      const fetchNew = async (afterSeq: number): Promise<void> => {
        const answer = await ask(afterSeq);
        for (const { id } of entriesSchema.parse(await answer.json())) if (!heard.has(id)) heard.set(id, now());
      };
      return eventsOf(`${url}/api/v1/jobs/${jobId}/live`, (data) => {
        const { kind, afterSeq = 0 } = eventSchema.parse(JSON.parse(data));
        if (kind === 'entries') void fetchNew(afterSeq);
      });
    }),
  );
  const sent = await streamAll(wrenches, { run: 'ours', pulls, samples: SAMPLES });
  await pause(SETTLING_MS);
  for (const end of ends) end();
  return waits(sent, heard);
}

/** Until the words of the verdict of each position have been drawn, seen from within the page of the first wrench. */
async function shownInBrowser(
  { url, cookie, jobIds }: StreamingWorkshop,
  wrenches: readonly StreamingWrench[],
  pulls: number,
) {
  const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: FLAGS });
  const context = await browser.newContext();
  const [name = '', value = ''] = cookie.split('=');
  await context.addCookies([{ name, value, url }]);
  const page = await context.newPage();
  await page.goto(`${url}/jobs/${jobIds[0]}/work/J1`);
  await page.locator('section.last').waitFor();
  await page.evaluate(() => {
    const shown: number[] = [];
    Object.assign(globalThis, { shown });
    const words = () => document.querySelector('.last-position')?.textContent ?? '';
    let before = words();
    new MutationObserver(() => {
      if (words() === before) return;
      before = words();
      requestAnimationFrame(() => setTimeout(() => shown.push(performance.timeOrigin + performance.now())));
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
  });
  const sent = await streamAll(wrenches, { run: 'page', pulls, samples: SAMPLES });
  await pause(SETTLING_MS);
  const shown = z.array(z.number()).parse(await page.evaluate('globalThis.shown'));
  await browser.close();
  if (shown.length !== pulls) throw new Error(`${shown.length} verdicts were shown of ${pulls}`);
  return waits(sent, new Map(shown.map((ms, number) => [pullId('page', serialOf(0), number), ms])));
}

const at = (values: readonly number[], share: number): number => {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
};

function besides(name: string, ours: readonly number[], peer: readonly number[], asked: number): BenchResult[] {
  const note = `Peer: a bare echo of the result line from the same terminals over server-sent events. ${ours.length} verdicts of ${asked} pulls; ${peer.length} echoes.`;
  return [
    { share: 0.5, called: 'median' },
    { share: 0.99, called: '99th percentile' },
  ].map(({ share, called }) => ({
    name: `${name}, ${called}`,
    ours: at(ours, share),
    peer: at(peer, share),
    unit: 'ms',
    ratio: at(ours, share) / at(peer, share),
    note,
  }));
}
