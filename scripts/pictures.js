// Takes pictures of the screens with the demonstration loaded: `node scripts/pictures.js [FOLDER]`, default `.screenshots`.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { chromium } from 'playwright-core';
import { build } from './build.js';
import { ROOT } from './steps.js';

const SIZES = [
  [360, 740],
  [820, 1180],
  [1440, 900],
];
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

build();
const folder = path.resolve(process.argv[2] ?? path.join(ROOT, '.screenshots'));
mkdirSync(folder, { recursive: true });
const data = mkdtempSync(path.join(tmpdir(), 'clampwright-pictures-'));
const server = spawn(process.execPath, [`${ROOT}/cli/bin/clampwright.js`, 'serve', '--data', data, '--port', '0'], {
  stdio: ['ignore', 'pipe', 'inherit'],
});
const url = await addressOf(server);
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: FLAGS });
const screens = await screensOf(url);
for (const [width, height] of SIZES) {
  for (const colorScheme of ['light', 'dark']) {
    const page = await browser.newPage({ viewport: { width, height }, colorScheme });
    for (const [name, address] of Object.entries(screens)) {
      await page.goto(url + address);
      await page.waitForLoadState('networkidle').catch(() => undefined);
      await page.screenshot({ path: path.join(folder, `${name}-${width}-${colorScheme}.png`), fullPage: true });
    }
    await page.close();
  }
}
await browser.close();
server.kill('SIGTERM');
await once(server, 'exit');
rmSync(data, { recursive: true, force: true });
console.log(`${Object.keys(screens).length * SIZES.length * 2} pictures in ${folder}`);

async function addressOf(child) {
  let said = '';
  for await (const piece of child.stdout) {
    said += piece;
    const found = /http:\/\/127\.0\.0\.1:\d+/.exec(said)?.[0];
    if (found) return found;
  }
  throw new Error(`the server ended without an address: ${said}`);
}

async function screensOf(at) {
  const jobs = await listAt(`${at}/api/v1/jobs`);
  const joints = await listAt(`${at}/api/v1/joints`);
  const half = jobs.find(({ done, total }) => done > 0 && done < total).id;
  const closed = jobs.find(({ status }) => status === 'closed').id;
  return {
    today: '/',
    jobs: '/jobs',
    job: `/jobs/${half}`,
    'job-closed': `/jobs/${closed}`,
    work: `/jobs/${half}/work/J1`,
    import: `/jobs/${half}/import`,
    joints: '/joints',
    joint: `/joints/${joints[0].id}`,
    wrenches: '/wrenches',
    records: '/records',
    bench: '/bench',
    'bench-order': '/bench/tightening-order',
    workshop: '/workshop',
  };
}

async function listAt(address) {
  const answer = await (await fetch(address)).json();
  return Array.isArray(answer) ? answer : Object.values(answer).find(Array.isArray);
}
