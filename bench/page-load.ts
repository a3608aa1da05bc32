import { chromium } from 'playwright-core';
import type { BenchResult } from './result.ts';
import { served } from './served.ts';

const AIM_KB = 200;
const FLAGS = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Bytes over the wire until a page of the workshop stands for the first time, kB. */
async function transferredKb(url: string): Promise<number> {
  const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: FLAGS });
  const page = await browser.newPage();
  const wire = await page.context().newCDPSession(page);
  let bytes = 0;
  await wire.send('Network.enable');
  wire.on('Network.loadingFinished', ({ encodedDataLength }) => {
    bytes += encodedDataLength;
  });
  await page.goto(url);
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.waitForTimeout(1500);
  await browser.close();
  return bytes / 1000;
}

/** Size of the first page load, beside what it is aimed to stay under. */
export async function run(): Promise<readonly BenchResult[]> {
  const workshop = await served();
  const ours = await transferredKb(workshop.url);
  await workshop.end();
  return [
    {
      name: 'first page load (Today)',
      ours,
      peer: AIM_KB,
      unit: 'kB',
      ratio: ours / AIM_KB,
      note: 'everything over the wire with a cold cache, fonts and data included; the peer is the aim of 200 kB',
    },
  ];
}
