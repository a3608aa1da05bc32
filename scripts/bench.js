// Benchmarks, each beside its peer in the same run: `npm run bench`, or `npm run bench -- NAME`.
import { build } from './build.js';
import { must, ROOT, tool } from './steps.js';

build();
must('building the benchmarks', tool('tsc'), ['-b', 'bench']);
must('benchmarks', process.execPath, ['--expose-gc', `${ROOT}/bench/dist/main.js`, ...process.argv.slice(2)]);
