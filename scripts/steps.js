import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

/** The top of the repository. */
export const ROOT = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '..');

/** A tool that the project's own packages brought. */
export const tool = (name) => path.join(ROOT, 'node_modules', '.bin', name);

/** Runs a command in the open and ends the script with its exit code when it fails. */
export function must(title, command, args, options = {}) {
  process.stderr.write(`── ${title}\n`);
  const code = run(command, args, options);
  if (code !== 0) {
    process.stderr.write(`✗ ${title} failed (exit ${code}): ${path.basename(command)} ${args.join(' ')}\n`);
    process.exit(code);
  }
}

/** Runs a command in the open; its exit code. */
export function run(command, args, options = {}) {
  const ended = spawnSync(command, args, { cwd: ROOT, stdio: 'inherit', ...options });
  if (ended.error) process.stderr.write(`${ended.error.message}\n`);
  return ended.status ?? 1;
}

const SKIPPED = new Set(['node_modules', 'dist', '.git', 'coverage']);

function newestMs(folder, isSource) {
  let newest = 0;
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const full = path.join(folder, entry.name);
    if (entry.isDirectory()) {
      if (!SKIPPED.has(entry.name)) newest = Math.max(newest, newestMs(full, isSource));
    } else if (isSource(entry.name)) newest = Math.max(newest, statSync(full).mtimeMs);
  }
  return newest;
}

/** Whether something was written since the stamp was set. */
export function isStale(stamp, workspaces, isSource) {
  const file = path.join(ROOT, 'dist', stamp);
  if (!existsSync(file)) return true;
  const builtMs = statSync(file).mtimeMs;
  return workspaces.some((workspace) => newestMs(path.join(ROOT, workspace), isSource) > builtMs);
}

export function setStamp(stamp) {
  mkdirSync(path.join(ROOT, 'dist'), { recursive: true });
  writeFileSync(path.join(ROOT, 'dist', stamp), `${new Date().toISOString()}\n`);
}
