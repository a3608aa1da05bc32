// Prints every published value beside ours. Builds what it needs; fails when one value misses.
// With `--curves FOLDER` it reads every measured curve there instead, and prints findings beside labels.
import path from 'node:path';
import { must, ROOT, run, tool } from './steps.js';

must('building core and validation', tool('tsc'), ['-b', 'validation']);
process.exitCode = run(process.execPath, [path.join(ROOT, 'validation', 'dist', 'print.js'), ...process.argv.slice(2)]);
