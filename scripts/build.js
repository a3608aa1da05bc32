// Builds what is not built: `--node` the command and the server, `--web` the client, neither: both. `--all`: also when nothing changed.
import { existsSync } from 'node:fs';
import { isStale, must, ROOT, setStamp, tool } from './steps.js';

const NODE = ['core', 'store', 'intake', 'report', 'server', 'demo', 'cli'];
const isNodeSource = (name) => /\.(ts|json)$/.test(name) && !name.includes('.test.');
const isWebSource = (name) => /\.(ts|tsx|css|html|json|svg)$/.test(name) && !name.includes('.test.');

/** Builds the Node side, the client, or both, where the sources are newer than the last build. */
export function build({ node = true, web = true, all = false } = {}) {
  if (!existsSync(tool('tsc'))) {
    process.stderr.write('Nothing was built: the compiler is a development dependency; install with `npm ci`.\n');
    return;
  }
  if (node && (all || isStale('.node', NODE, isNodeSource))) {
    must('building the command and the server (half a minute the first time)', tool('tsc'), ['-b', ...NODE]);
    setStamp('.node');
  }
  if (web && (all || isStale('.web', ['core', 'web', 'server/api'], isWebSource))) {
    must('building the browser client', tool('vite'), ['build', '--logLevel', 'warn'], { cwd: `${ROOT}/web` });
    setStamp('.web');
  }
}

if (process.argv[1]?.endsWith('build.js')) {
  const asked = process.argv.slice(2);
  const one = asked.includes('--node') || asked.includes('--web');
  build({ node: !one || asked.includes('--node'), web: !one || asked.includes('--web'), all: asked.includes('--all') });
}
