import { spawn } from 'node:child_process';
import { setTimeout as wait } from 'node:timers/promises';
import { residentMb } from './resident.ts';
import type { BenchResult } from './result.ts';
import { served } from './served.ts';

const SETTLING_MS = 4000;

/** Memory of the served workshop at rest, beside a bare HTTP server of Node. */
export async function run(): Promise<readonly BenchResult[]> {
  const ours = await served();
  await fetch(`${ours.url}/api/v1/today`);
  await wait(SETTLING_MS);
  const oursMb = residentMb(ours.pid);
  await ours.end();
  const bare = spawn(
    process.execPath,
    ['-e', "require('node:http').createServer((_, answer) => answer.end('ok')).listen(0)"],
    { stdio: 'ignore' },
  );
  await wait(SETTLING_MS);
  const peerMb = residentMb(bare.pid ?? 0);
  bare.kill();
  return [
    {
      name: 'memory at rest',
      ours: oursMb,
      peer: peerMb,
      unit: 'MB',
      ratio: oursMb / peerMb,
      note: 'served workshop with the demo loaded, beside a bare HTTP server of Node; resident set after some seconds',
    },
  ];
}
