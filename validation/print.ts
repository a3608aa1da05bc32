import { type Check, outcomeOf, type Source } from './check.ts';
import { reportCurves } from './curves/report.ts';
import { SOURCES } from './sources.ts';

const WIDTHS = [46, 26, 26, 12] as const;

const row = (...cells: readonly string[]): string =>
  cells
    .map((cell, index) => cell.padEnd(WIDTHS[index] ?? 0))
    .join('  ')
    .trimEnd();

function line(check: Check): { readonly text: string; readonly holds: boolean } {
  const { holds, ours, theirs, difference } = outcomeOf(check);
  const { unit, misprint, because } = check.theirs;
  const notes = [misprint === undefined ? '' : `printed ${misprint}`, because ?? '']
    .filter((note) => note !== '')
    .join(': ');
  return { holds, text: row(`${holds ? ' ' : '✗'} ${check.name}`, `${theirs} ${unit}`, ours, difference, notes) };
}

function section({ source, howWeHaveIt, checks }: Source): { readonly text: string; readonly misses: number } {
  const lines = checks.map(line);
  const head = [`${source} [${howWeHaveIt}]`, row('  check', 'theirs', 'ours', 'difference', 'note')];
  return {
    text: [...head, ...lines.map(({ text }) => text), ''].join('\n'),
    misses: lines.filter(({ holds }) => !holds).length,
  };
}

const [option, folder] = process.argv.slice(2);
if (option === '--curves') {
  if (folder === undefined) throw new Error('--curves wants the folder of the measured curves');
  process.stdout.write(`${reportCurves(folder)}\n`);
  process.exit(0);
}

const sections = SOURCES.map(section);
const checks = SOURCES.reduce((sum, source) => sum + source.checks.length, 0);
const misses = sections.reduce((sum, { misses }) => sum + misses, 0);
process.stdout.write(`${sections.map(({ text }) => text).join('\n')}\n`);
process.stdout.write(`${checks} checks against ${SOURCES.length} sources: ${checks - misses} hold, ${misses} miss\n`);
process.exitCode = misses === 0 ? 0 : 1;
