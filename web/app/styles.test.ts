import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';

const WEB = path.resolve(import.meta.dirname, '..');
/** Fetched with the page itself, and on paper alone. */
const PRINT = path.join('app', 'print.css');
const sheets = readdirSync(WEB, { recursive: true, encoding: 'utf8' }).filter(
  (file) => file.endsWith('.css') && !/^(dist|node_modules)\b/.test(file) && file !== PRINT,
);

/** Classes that a sheet of styles says how to draw wherever they stand: those that a selector consists of alone. */
function classesIn(sheet: string): readonly string[] {
  const rules = readFileSync(path.join(WEB, sheet), 'utf8').replaceAll(/\/\*.*?\*\//gs, '');
  const selectors = [...rules.matchAll(/([^{}]+)\{/g)].flatMap(([, list = '']) => list.split(','));
  return selectors.flatMap((selector) => /^\.([\w-]+)$/.exec(selector.trim())?.[1] ?? []);
}

// Sheets are fetched with their screens and then stay: a second rule would make a screen look otherwise after another one.
it('a class is drawn by one sheet of styles', () => {
  const drawnBy = new Map<string, Set<string>>();
  for (const sheet of sheets) {
    for (const name of classesIn(sheet)) drawnBy.set(name, (drawnBy.get(name) ?? new Set()).add(sheet));
  }
  expect(drawnBy.size).toBeGreaterThan(100);
  expect([...drawnBy].filter(([, by]) => by.size > 1).map(([name]) => name)).toEqual([]);
});
