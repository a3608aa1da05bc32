import { readFileSync } from 'node:fs';

/** Resident memory of a process, MB. @source proc(5): VmRSS of /proc/PID/status, kB */
export function residentMb(pid: number): number {
  const status = readFileSync(`/proc/${pid}/status`, 'utf8');
  const kb = /VmRSS:\s+(\d+) kB/.exec(status)?.[1];
  if (kb === undefined) throw new Error('this system tells no VmRSS');
  return Number(kb) / 1024;
}
