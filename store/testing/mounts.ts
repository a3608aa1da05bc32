import { spawnSync } from 'node:child_process';
import { chmodSync, statSync } from 'node:fs';
import { onTestFinished } from 'vitest';

/* Disks as tests want them. Making one takes the rights of root; each says whether it could be had. */

const mounts = (...args: readonly string[]): boolean => spawnSync('mount', args).status === 0;

const unmountAtEnd = (path: string): void => onTestFinished(() => void spawnSync('umount', [path]));

/** Puts an empty disk of a few megabytes at a folder. */
export function smallDisk(folder: string, megabytes: number): boolean {
  if (!mounts('-t', 'tmpfs', '-o', `size=${megabytes}m`, 'tmpfs', folder)) return false;
  unmountAtEnd(folder);
  return true;
}

/** Makes a file or folder read-only, also for root, whom permissions do not bind. */
export function readOnly(path: string): boolean {
  if (process.getuid?.() !== 0) {
    const { mode } = statSync(path);
    chmodSync(path, mode & 0o555);
    onTestFinished(() => chmodSync(path, mode));
    return true;
  }
  if (!mounts('--bind', path, path)) return false;
  unmountAtEnd(path);
  return mounts('-o', 'remount,ro,bind', path);
}

export const NEEDS_ROOT = 'mounting a disk takes the rights of root, which this run has not got';
