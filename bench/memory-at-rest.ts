import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { setTimeout as wait } from 'node:timers/promises';
import type { BenchResult } from './result.ts';
import { served } from './served.ts';

const SETTLING_MS = 4000;

/** Resident memory of a process, MB. @source proc(5): VmRSS of /proc/PID/status, kB */
function residentMb(pid: number): number {
  const status = readFileSync(`/proc/${pid}/status`, 'utf8');
  const kb = /VmRSS:\s+(\d+) kB/.exec(status)?.[1];
  if (kb === undefined) throw new Error('this system tells no VmRSS');
  return Number(kb) / 1024;
}

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
