import { createReadStream, readFileSync } from 'node:fs';
import { incomingPullSchema } from '@clampwright/core/record';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { mappingSchema } from './mapping.ts';
import type { Outcome } from './outcome.ts';
import { readPulls } from './read.ts';

const context = {
  jobId: '01973c3e-6a10-7000-8000-00000000000a',
  jointRef: 'J1',
  readAt: '2026-05-04T09:00:00.000Z',
  fileName: 'curves.csv',
};

const textOf = (sample: string, file: string) =>
  readFileSync(new URL(`samples/${sample}/${file}`, import.meta.url), 'utf8');
const tableOf = (sample: string, file: string) =>
  Papa.parse<Record<string, string>>(textOf(sample, file), { header: true, skipEmptyLines: true }).data;

async function outcomesOf(sample: string): Promise<readonly Outcome[]> {
  const mapping = mappingSchema.parse(JSON.parse(textOf(sample, 'mapping.json')));
  const bytes = createReadStream(new URL(`samples/${sample}/curves.csv`, import.meta.url));
  const outcomes: Outcome[] = [];
  for await (const outcome of readPulls(bytes, mapping, context)) outcomes.push(outcome);
  return outcomes;
}
const pullsOf = (outcomes: readonly Outcome[]) =>
  outcomes.flatMap((outcome) => (outcome.kind === 'pull' ? [outcome.pull] : []));

describe('measured curves of screws into plastic', () => {
  it('become one pull each, with the published peak torque and angles', async () => {
    const outcomes = await outcomesOf('screw-into-plastic');
    expect(outcomes.filter((outcome) => outcome.kind === 'refused')).toEqual([]);
    const read = pullsOf(outcomes).map(({ shown, shownTorqueNm, shownAngleDeg, trace }) => ({
      samples: trace?.timeS.length,
      peak: shownTorqueNm,
      shownPeak: Number(shown.torque.text),
      furthest: shownAngleDeg,
      shownAngle: Number(shown.angle?.text),
      last: trace?.angleDeg.at(-1),
      atPeak: trace?.angleDeg[trace.torqueNm.indexOf(shownTorqueNm)],
    }));
    const published = tableOf('screw-into-plastic', 'expected.csv').map((run) => ({
      samples: Number(run.samples),
      peak: Number(run.peak_torque_Nm),
      shownPeak: Number(run.peak_torque_Nm),
      furthest: Number(run.furthest_angle_deg),
      shownAngle: Number(run.furthest_angle_deg),
      last: Number(run.last_angle_deg),
      atPeak: Number(run.angle_at_peak_deg),
    }));
    expect(read).toHaveLength(8);
    expect(read).toEqual(published);
  });

  it('are pulls as the record takes them', async () => {
    for (const pull of pullsOf(await outcomesOf('screw-into-plastic')))
      expect(incomingPullSchema.parse(pull)).toEqual(pull);
  });

  it('turn at about the published 600 rpm at their fastest', async () => {
    // README of the data: thread forming at 600 rpm, that is 3600 degrees a second.
    for (const pull of pullsOf(await outcomesOf('screw-into-plastic'))) {
      expect(pull.fastestDegPerS).toBeGreaterThan(0.9 * 3600);
      expect(pull.fastestDegPerS).toBeLessThan(1.1 * 3600);
    }
  });
});

describe('measured curves of loosening', () => {
  it('are refused, each with its first line and the reason', async () => {
    const outcomes = await outcomesOf('unscrewing-m4-m8');
    const samples = tableOf('unscrewing-m4-m8', 'expected.csv').map((run) => Number(run.samples));
    const firstLines = [2, 2 + (samples[0] ?? 0), 2 + (samples[0] ?? 0) + (samples[1] ?? 0)];
    expect(outcomes).toMatchObject(
      firstLines.map((line) => ({
        kind: 'refused',
        line,
        field: 'torque',
        message: expect.stringContaining('loosening'),
      })),
    );
  });
});
