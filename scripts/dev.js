// Compiles and serves while sources change: the compiler, the server and the client's own server, together.
import { spawn } from 'node:child_process';
import { build } from './build.js';
import { ROOT, tool } from './steps.js';

build({ web: false });
const children = [
  spawn(tool('tsc'), ['-b', '-w', '--preserveWatchOutput', 'cli'], { cwd: ROOT, stdio: 'inherit' }),
  spawn(process.execPath, ['--watch', 'cli/dist/main.js', 'serve', '--port', '4710', ...process.argv.slice(2)], {
    cwd: ROOT,
    stdio: 'inherit',
  }),
  spawn(tool('vite'), [], { cwd: `${ROOT}/web`, stdio: 'inherit' }),
];
const stop = () => {
  for (const child of children) child.kill();
};
process.on('SIGINT', stop);
process.on('SIGTERM', stop);
