import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type DemoJobs, demoJobs, exported } from './testing/demo-jobs.ts';
import { makePlace, type Place } from './testing/place.ts';

let place: Place;
let jobs: DemoJobs;
beforeEach(async () => {
  place = makePlace();
  jobs = await demoJobs(place);
});
afterEach(() => place.remove());

describe('exporting', () => {
  it('gives each form, under a name that tells asset, job and day', async () => {
    for (const [format, beginning] of [
      ['json', '{"entries":['],
      ['pdf', '%PDF-'],
      ['html', '<!doctype html>'],
      ['csv', ''],
    ] as const) {
      const { code, stdout, stderr } = await exported(place, jobs.closed, '--format', format);
      expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
      expect(stdout).toMatch(new RegExp(`^\\d{4}-\\d\\d-\\d\\d_service-vehicle_winter-tyres.*\\.${format}\n$`));
      const text = readFileSync(path.join(place.folder, stdout.trim()), 'latin1');
      expect(text.length).toBeGreaterThan(1000);
      expect(text.toLowerCase().startsWith(beginning.toLowerCase())).toBe(true);
    }
  });

  it('speaks the language that is asked for, to standard output too', async () => {
    const { stdout } = await exported(place, jobs.closed, '--format', 'html', '--language', 'de', '--out', '-');
    expect(stdout).toContain('<html lang="de"');
    expect(readdirSync(place.folder)).toEqual([]);
  });

  it('says where a job is still open', async () => {
    const { code, stderr } = await exported(place, jobs.open, '--out', 'open.json');
    expect(code).toBe(0);
    expect(stderr).toContain('not closed');
    expect(existsSync(path.join(place.folder, 'open.json'))).toBe(true);
  });

  it('refuses what cannot be, and leaves nothing half written', async () => {
    expect(await exported(place, 'no-such-job')).toMatchObject({
      code: 1,
      stderr: expect.stringContaining('no-such-job'),
    });
    expect(await exported(place, jobs.closed, '--format', 'docx')).toMatchObject({
      code: 2,
      stderr: expect.stringContaining('json, pdf, html, csv'),
    });
    expect(await exported(place, jobs.closed, '--out', 'no-folder/record.json')).toMatchObject({
      code: 1,
      stderr: expect.stringContaining('--out'),
    });
    expect(await exported(place, jobs.closed, '--out', '.')).toMatchObject({ code: 2 });
    expect(await place.run(['record', 'export', jobs.closed, '--data', 'mistyped'])).toMatchObject({
      code: 1,
      stderr: expect.stringContaining('--data'),
    });
    expect(readdirSync(place.folder)).toEqual([]);
  });
});
