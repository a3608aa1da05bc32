// Format, lint, types, boundaries, dead code. `--write` mends format and import order.
import { must, tool } from './steps.js';

const write = process.argv.includes('--write');
must('format', tool('biome'), ['check', ...(write ? ['--write'] : []), '.']);
must('types', tool('tsc'), ['-b']);
must('lint', tool('oxlint'), ['--type-aware', '--deny-warnings', '.']);
must('boundaries', process.execPath, ['scripts/boundaries.js']);
must('dead code', tool('knip'), ['--no-progress']);
