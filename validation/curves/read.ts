import { readFileSync } from 'node:fs';
import path from 'node:path';
import { gunzipSync } from 'node:zlib';

/** One measured curve with what its authors say of it. */
export interface LabelledCurve {
  readonly run: string;
  readonly labels: Readonly<Record<string, string>>;
  readonly timeS: readonly number[];
  readonly angleDeg: readonly number[];
  readonly torqueNm: readonly number[];
}

const rows = (text: string): readonly string[][] =>
  text
    .trim()
    .split('\n')
    .map((line) => line.split(','));

/** Curves and labels of a folder with `curves.csv.gz` and `runs.csv`. */
export function readCurves(folder: string): readonly LabelledCurve[] {
  const [head = [], ...runs] = rows(readFileSync(path.join(folder, 'runs.csv'), 'utf8'));
  const labels = new Map(runs.map((run) => [run[0]!, Object.fromEntries(head.map((name, i) => [name, run[i] ?? '']))]));
  const [, ...samples] = rows(gunzipSync(readFileSync(path.join(folder, 'curves.csv.gz'))).toString('utf8'));
  const curves = new Map<string, { timeS: number[]; angleDeg: number[]; torqueNm: number[] }>();
  for (const [run = '', time, angle, torque] of samples) {
    const curve = curves.get(run) ?? { timeS: [], angleDeg: [], torqueNm: [] };
    curves.set(run, curve);
    curve.timeS.push(Number(time));
    curve.angleDeg.push(Number(angle));
    curve.torqueNm.push(Number(torque));
  }
  return [...curves].map(([run, curve]) => ({ run, labels: labels.get(run) ?? {}, ...curve }));
}
