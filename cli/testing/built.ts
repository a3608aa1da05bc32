import { readdirSync, statSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const WORKSPACES = ['core', 'store', 'intake', 'report', 'server', 'demo', 'cli'];

const isSource = (file: string): boolean =>
  file.endsWith('.ts') && !file.endsWith('.test.ts') && !/^dist\b|\bnode_modules\b/.test(file);
const changedMs = (file: string): number => statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? 0;

function isStale(workspace: string): boolean {
  const folder = path.join(ROOT, workspace);
  const builtMs = changedMs(path.join(folder, 'dist', '.tsbuildinfo'));
  const sources = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(isSource);
  return sources.some((file) => changedMs(path.join(folder, file)) > builtMs);
}

/**
 * The command as it was built.
 *
 * @throws where it was not, or a source has changed since: a test of something else would be worse than none
 */
export function builtCommand(): string {
  const stale = WORKSPACES.filter(isStale);
  if (stale.length > 0)
    throw new Error(`Not built since it was changed: ${stale.join(', ')}. Run \`npx tsc -b cli\` first.`);
  return path.join(ROOT, 'cli', 'bin', 'clampwright.js');
}
