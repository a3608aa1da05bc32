// Holds the arrows of the house. Fails, too, when it read suspiciously few modules: a checker that reads nothing finds nothing.
import { cruise } from 'dependency-cruiser';
import extractTSConfig from 'dependency-cruiser/config-utl/extract-ts-config';
import rules from '../.dependency-cruiser.cjs';
import { ROOT } from './steps.js';

/** Forbidden imports below a folder, and how many modules were read. */
export async function forbiddenImports(baseDir, folders) {
  const { options, ...ruleSet } = rules;
  const { enhancedResolveOptions, tsConfig: _, ...rest } = options;
  const read = await cruise(folders, { ...rest, ruleSet, validate: true, baseDir }, enhancedResolveOptions, {
    tsConfig: extractTSConfig(`${ROOT}/tsconfig.base.json`),
  });
  const violations = read.output.summary.violations.map(({ from, to, rule }) => `${rule.name}: ${from} → ${to}`);
  return { violations, modules: read.output.modules.filter(({ source }) => !source.includes('node_modules')).length };
}

const FEWEST_MODULES = 150;

if (process.argv[1]?.endsWith('boundaries.js')) {
  const elsewhere = process.argv[2];
  const folders = elsewhere
    ? ['core', 'store', 'web']
    : ['core', 'store', 'intake', 'report', 'server', 'demo', 'cli', 'web', 'validation', 'bench'];
  const { violations, modules } = await forbiddenImports(elsewhere ? `${ROOT}/${elsewhere}` : ROOT, folders);
  for (const violation of violations) console.error(violation);
  console.log(`${modules} modules read, ${violations.length} forbidden imports`);
  const tooFew = !elsewhere && modules < FEWEST_MODULES;
  if (tooFew) console.error(`Only ${modules} modules were read; at least ${FEWEST_MODULES} are there.`);
  process.exit(violations.length > 0 || tooFew ? 1 : 0);
}
