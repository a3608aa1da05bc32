import { existsSync } from 'node:fs';
import path from 'node:path';
import { reportLoosening } from './loosening.ts';
import { reportTightening } from './tightening.ts';

const PARTS = [
  ['screw-into-plastic', reportTightening],
  ['unscrewing-m4-m8', reportLoosening],
] as const;

/** What the curves of a folder say beside their labels; says so where a part of the data is missing. */
export const reportCurves = (folder: string): string =>
  PARTS.map(([name, report]) => {
    const part = path.join(folder, name);
    return existsSync(part) ? report(part) : `### ${name}\n\nNot in ${folder}: left out.`;
  }).join('\n\n');
