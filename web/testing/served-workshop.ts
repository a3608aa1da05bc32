import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { type Browser, chromium } from 'playwright-core';

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

/** The real command with the demo, in a folder of its own, and a real Chromium before it. */
export interface ServedWorkshop {
  readonly url: string;
  readonly folder: string;
  readonly browser: Browser;
  readonly end: () => Promise<void>;
}

async function addressOf(server: ChildProcess): Promise<string> {
  let said = '';
  for await (const piece of server.stdout ?? []) {
    said += String(piece);
    const address = /http:\/\/127\.0\.0\.1:\d+/.exec(said)?.[0];
    if (address !== undefined) return address;
  }
  throw new Error(`the server ended without an address: ${said}`);
}

/** Serves the demo at a free port as its user would, and starts a browser. */
export async function serveWorkshop(): Promise<ServedWorkshop> {
  const folder = mkdtempSync(path.join(tmpdir(), 'clampwright-browser-'));
  const server = spawn(process.execPath, ['cli/bin/clampwright.js', 'serve', '--data', folder, '--port', '0'], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const url = await addressOf(server);
  const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: FLAGS });
  const end = async (): Promise<void> => {
    await browser.close();
    server.kill('SIGTERM');
    await once(server, 'exit');
    rmSync(folder, { recursive: true, force: true });
  };
  return { url, folder, browser, end };
}
