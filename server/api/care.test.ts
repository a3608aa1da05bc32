import type { Calibration, ReferenceStandard } from '@clampwright/core/wrench';
import { readDcc } from '@clampwright/report';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  aWrench,
  identity,
  jobOnBracket,
  takeWrench,
  typedPull,
  type Workshop,
  workshop,
} from '../testing/workshop.ts';
import { recallPageSchema, todaySchema, wrenchCareSchema } from './contract.ts';

const wrench = aWrench('0700');
const reference: ReferenceStandard = {
  id: identity('reference'),
  name: 'Bench transducer',
  serial: 'KH-R1',
  lowestNm: 1,
  highestNm: 200,
  certificate: 'R-1',
  by: 'a laboratory',
  calibratedOn: '2026-01-05',
  dueOn: '2027-01-05',
  expandedUncertaintyPercent: 0.4,
};

/** Shows more than there is by so many percent. */
const calibration = (word: string, deviationPercent: number, change: Partial<Calibration> = {}): Calibration => ({
  id: identity(word),
  wrenchId: wrench.id,
  calibratedOn: '2026-03-02',
  dueOn: '2027-03-02',
  certificate: word,
  by: 'The keeper',
  reference,
  asFound: {
    at: '2026-03-02T07:00:00.000Z',
    preloadings: 1,
    spreads: {},
    points: [20, 60, 100].map((targetNm) => ({
      direction: 'clockwise',
      targetNm,
      referenceNm: [0.999, 1, 1.001, 1, 1].map((share) => (share * targetNm) / (1 + deviationPercent / 100)),
    })),
  },
  ...change,
});

let shop: Workshop;
let keeper: string;
let technician: string;
beforeAll(async () => {
  shop = await workshop();
  keeper = await shop.signIn('keeper');
  technician = await shop.signIn('technician');
  const jobId = await jobOnBracket(shop);
  await takeWrench(shop, jobId, wrench, technician);
  for (const [n, torqueNm] of [42, 43, 44, 45.5].entries())
    await shop.ask('POST', `/jobs/${jobId}/commands`, { command: typedPull(`pull ${n}`, torqueNm) }, technician);
  await shop.ask('POST', '/references', reference, keeper);
  shop.wait(2 * 3_600_000);
});
afterAll(() => shop.close());

/** The keeper wants it again after as many pulls as it made that day. */
const good = calibration('good', 1, { dueAfterPulls: 4 });
const refused = async (body: Calibration) => (await shop.ask('POST', '/calibrations', body, keeper)).body;

describe('a calibration with its readings', () => {
  it('is refused by field where it cannot be', async () => {
    expect(await refused(calibration('x', 1, { calibratedOn: '2026-03-03' }))).toMatchObject({
      status: 400,
      field: 'calibratedOn',
    });
    expect(await refused(calibration('x', 1, { dueOn: '2026-03-02' }))).toMatchObject({ field: 'dueOn' });
    const { asFound } = calibration('x', 1);
    const points = asFound.points.map((point, n) => (n === 1 ? { ...point, referenceNm: [60, 0, 60] } : point));
    expect(await refused(calibration('x', 1, { asFound: { ...asFound, points } }))).toMatchObject({
      field: 'asFound.points[1].referenceNm[1]',
    });
  });

  it('takes no reference that the register does not know, nor one overdue', async () => {
    expect(await refused(calibration('x', 1, { reference: { ...reference, dueOn: '2030-01-01' } }))).toMatchObject({
      status: 409,
    });
    const old = { ...reference, id: identity('old'), serial: 'KH-R0', calibratedOn: '2024-01-05', dueOn: '2025-01-05' };
    await shop.ask('POST', '/references', old, keeper);
    expect(await refused(calibration('x', 1, { reference: old }))).toMatchObject({ field: 'reference.dueOn' });
  });

  it('gives the wrench its points', async () => {
    const answer = await shop.ask('POST', '/calibrations', good, keeper);
    expect(answer.status).toBe(201);
    expect(answer.body).toMatchObject({
      wrench: { calibration: { certificate: 'good', points: [{ torqueNm: 20 }, { torqueNm: 60 }, { torqueNm: 100 }] } },
    });
    const care = wrenchCareSchema.parse((await shop.ask('GET', `/toolbox/wrenches/${wrench.id}/care`)).body);
    expect(care.calibrations).toEqual([good]);
    expect(care.pullsSince).toBe(4);
  });

  it('is due after the pulls that were chosen for it, though its day is a year away', async () => {
    expect((await shop.ask('GET', '/due')).body).toMatchObject([
      { serial: 'KH-R0', state: 'overdue' },
      { serial: 'KH-0700', state: 'overdue', pullsSince: 4, dueAfterPulls: 4, dueOn: '2027-03-02' },
      { serial: 'KH-R1', state: 'valid' },
    ]);
    expect(todaySchema.parse((await shop.ask('GET', '/today')).body).wrenches).toMatchObject([{ state: 'overdue' }]);
    expect((await shop.ask('GET', '/due.ics')).text.replaceAll('\r\n ', '')).toContain(
      'Or sooner\\, once it has made 4 pulls.',
    );
  });

  it('has a certificate to read, to print, and for machines, which is read back as it was', async () => {
    const path = `/calibrations/${identity('good')}/certificate`;
    expect((await shop.ask('GET', `${path}.pdf?language=fr`)).text.slice(0, 5)).toBe('%PDF-');
    expect((await shop.ask('GET', `${path}.html`)).text).toContain('Bench transducer');
    const xml = await shop.ask('GET', `${path}.xml?language=de`);
    expect(xml.headers.get('content-disposition')).toContain('certificate_2026-03-02_KH-0700.xml');
    expect(readDcc(xml.text)).toMatchObject({ ok: true, value: { calibration: good } });
  });
});

describe('a recall', () => {
  const off = calibration('off', 8, { asFound: { ...calibration('off', 8).asFound, at: '2026-03-02T07:30:00.000Z' } });
  const id = identity('recall');

  it('is opened for a wrench found off, which is not taken any more', async () => {
    expect((await shop.ask('POST', '/recalls', { id, calibrationId: identity('good') }, keeper)).status).toBe(409);
    expect((await shop.ask('POST', '/calibrations', off, keeper)).body).toMatchObject({
      wrench: { calibration: { conforms: false } },
    });
    const opened = await shop.ask('POST', '/recalls', { id, calibrationId: off.id }, keeper);
    expect(opened.body).toMatchObject({
      goodAt: '2026-03-02T07:00:00.000Z',
      foundAt: '2026-03-02T07:30:00.000Z',
      before: [{ torqueNm: 20 }, { torqueNm: 60 }, { torqueNm: 100 }],
    });
    expect((await shop.ask('POST', '/recalls', { id, calibrationId: off.id }, keeper)).body).toEqual(opened.body);
    expect(todaySchema.parse((await shop.ask('GET', '/today')).body).wrenches).toMatchObject([{ state: 'off' }]);
  });

  it('lists every pull since the wrench was last good, the likeliest outside first, and follows each', async () => {
    const dropped = { at: '2026-03-02T06:50:00.000Z', what: 'fell off the platform' };
    const second = identity('second recall');
    await shop.ask('POST', '/recalls', { id: second, calibrationId: identity('good'), dropped }, keeper);
    const path = `/recalls/${second}`;
    const page = recallPageSchema.parse((await shop.ask('GET', path)).body);
    expect(page.lines.map(({ pull }) => pull.torqueNm).toSorted((a, b) => a - b)).toEqual([42, 43, 44, 45.5]);
    const chances = page.lines.map(({ outside }) => outside);
    expect(chances).toEqual(chances.toSorted((a, b) => b - a));
    const pullId = page.lines[0]?.pull.pullId;
    const recheck = { id: identity('recheck'), pullId, outcome: 'tightened-again', note: '' };
    expect((await shop.ask('POST', `${path}/rechecks`, recheck, technician)).status).toBe(201);
    const stranger = { ...recheck, id: identity('stranger'), pullId: identity('no pull') };
    expect((await shop.ask('POST', `${path}/rechecks`, stranger, technician)).status).toBe(404);
    expect(recallPageSchema.parse((await shop.ask('GET', path)).body)).toMatchObject({ total: 4, rechecked: 1 });
    const csv = await shop.ask('GET', `${path}/list.csv?language=de`);
    expect(csv.text).toContain('nachgezogen');
    expect((await shop.ask('GET', `${path}/list.pdf?language=es`)).text.slice(0, 5)).toBe('%PDF-');
  });
});

describe('what is due', () => {
  it('is a list, a calendar and labels', async () => {
    expect((await shop.ask('GET', '/due')).body).toMatchObject([
      { kind: 'wrench', serial: 'KH-0700', state: 'off' },
      { kind: 'reference', serial: 'KH-R0', state: 'overdue' },
      { kind: 'reference', serial: 'KH-R1', state: 'valid' },
    ]);
    const calendar = await shop.ask('GET', '/due.ics?language=fr');
    expect(calendar.headers.get('content-type')).toContain('text/calendar');
    expect(calendar.text).toContain('SUMMARY:Étalonner : Bench transducer\\, KH-R1\r\n');
    expect((await shop.ask('GET', `/labels.pdf?id=${wrench.id}`)).text.slice(0, 5)).toBe('%PDF-');
  });
});

describe('checks and whereabouts', () => {
  it('are kept, and a check that has not come yet is not', async () => {
    const path = `/toolbox/wrenches/${wrench.id}`;
    const check = {
      id: identity('check'),
      wrenchId: wrench.id,
      at: '2026-03-02T07:00:00.000Z',
      by: 'The technician',
      checker: 'Checker KH-K1',
      direction: 'clockwise',
      indicatedNm: 60,
      referenceNm: 59.6,
    };
    expect((await shop.ask('POST', `${path}/checks`, check, technician)).status).toBe(201);
    const later = { ...check, id: identity('later'), at: '2026-03-04T07:00:00.000Z' };
    expect((await shop.ask('POST', `${path}/checks`, later, technician)).body).toMatchObject({ field: 'at' });
    expect((await shop.ask('POST', `${path}/whereabouts`, { heldBy: 'Ilse' }, technician)).body).toMatchObject({
      heldBy: 'Ilse',
    });
    const twin = { ...wrench, id: identity('twin') };
    expect((await shop.ask('POST', '/toolbox/wrenches', twin, keeper)).body).toMatchObject({
      status: 409,
      detail: expect.stringContaining('serial number KH-0700'),
    });
    expect((await shop.ask('POST', '/toolbox/wrenches', { ...twin, class: 'G' }, keeper)).body).toMatchObject({
      status: 400,
      field: 'class',
    });
  });
});
