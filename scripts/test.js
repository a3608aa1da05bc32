// Checks, unit, property, integration and browser tests, and the validation table; closes with one line that counts.
import { existsSync, mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { build } from './build.js';
import { needs } from './needs.js';
import { must, run, tool } from './steps.js';

needs();
build();
must('checks', process.execPath, ['scripts/check.js']);

const report = path.join(mkdtempSync(path.join(tmpdir(), 'clampwright-test-')), 'report.json');
const code = run(tool('vitest'), ['run', '--reporter=default', '--reporter=json', `--outputFile=${report}`]);
const validation = run(process.execPath, ['scripts/validation.js', '--quiet']);

if (existsSync(report)) {
  const { numPassedTests, numFailedTests, numPendingTests, testResults } = JSON.parse(readFileSync(report, 'utf8'));
  for (const file of testResults) {
    for (const test of file.assertionResults) if (test.status === 'pending') console.log(`skipped: ${test.fullName}`);
  }
  console.log(`\n${numPassedTests} passed, ${numFailedTests} failed, ${numPendingTests} skipped`);
}
process.exit(code || validation);
