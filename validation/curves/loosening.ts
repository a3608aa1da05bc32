import { analyseTrace, traceOptionsSchema, typed } from '@clampwright/core/trace';
import { Confusion } from './confusion.ts';
import { readCurves } from './read.ts';

const OPTIONS = traceOptionsSchema.parse({});

/** Screws turned loose: are they taken for loosening, is the break-away where it was published, does slipping tell. */
export function reportLoosening(folder: string): string {
  const curves = readCurves(folder);
  const confusion = new Confusion();
  let samePeak = 0;
  for (const curve of curves) {
    const read = analyseTrace(typed(curve), OPTIONS);
    if (read.kind === 'tightening') {
      confusion.add(curve.labels.label ?? '', ['taken for tightening']);
      continue;
    }
    const { breakAway, slips } = read.loosening;
    if (Math.abs(breakAway.torqueNm - Number(curve.labels.peak_loosening_torque_Nm)) < 5e-4) samePeak++;
    confusion.add(curve.labels.label ?? '', [slips > 0 ? 'loosening, torque came again' : 'loosening, one break-away']);
  }
  return [
    `### ${curves.length} loosenings, M4 to M8`,
    '',
    confusion.table(),
    '',
    `The break-away torque equals the published one in ${samePeak} of ${curves.length} curves.`,
  ].join('\n');
}
