import type { Calibration, ReferenceStandard, Wrench } from '@clampwright/core/wrench';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  aWrench,
  have,
  identity,
  jobOnBracket,
  takeWrench,
  typedPull,
  type Workshop,
  workshop,
} from '../testing/workshop.ts';
import { historyOf, historyOfKind } from './histories.ts';

const DAY_MS = 86_400_000;
const worked = aWrench('worked');
const idle = aWrench('idle');
const other: Wrench = { ...aWrench('other'), class: 'B' };

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

const calibration = (wrench: Wrench, deviationPercent: number): Calibration => ({
  id: identity(`calibration of ${wrench.serial}`),
  wrenchId: wrench.id,
  calibratedOn: '2026-03-05',
  dueOn: '2027-03-05',
  certificate: `C ${wrench.serial}`,
  by: 'The keeper',
  reference,
  asFound: {
    at: '2026-03-05T05:00:00.000Z',
    preloadings: 1,
    spreads: {},
    points: [20, 60, 100].map((targetNm) => ({
      direction: 'clockwise',
      targetNm,
      referenceNm: Array.from({ length: 5 }, () => targetNm / (1 + deviationPercent / 100)),
    })),
  },
});

let shop: Workshop;
beforeAll(async () => {
  shop = await workshop();
  const keeper = await shop.signIn('keeper');
  const technician = await shop.signIn('technician');
  const jobId = await jobOnBracket(shop);
  await takeWrench(shop, jobId, worked, technician);
  for (const [n, torqueNm] of [42, 43, 44].entries())
    await shop.ask('POST', `/jobs/${jobId}/commands`, { command: typedPull(`pull ${n}`, torqueNm) }, technician);
  for (const wrench of [idle, other]) have(await shop.store.wrenches.add(wrench));
  await shop.ask('POST', '/references', reference, keeper);
  shop.wait(3 * DAY_MS);
  const again = await shop.signIn('keeper');
  for (const one of [calibration(worked, 1), calibration(idle, 7), calibration(other, 1)])
    await shop.ask('POST', '/calibrations', one, again);
});
afterAll(() => shop.close());

describe('how wrenches were found', () => {
  it('counts the pulls between two calibrations, and tells none where there were none', async () => {
    // 10 January to 5 March 2026
    const days = 54;
    expect(have(await historyOf(worked, shop.store))).toMatchObject([{ days, pulls: 3, found: 'in' }]);
    const [still] = have(await historyOf(idle, shop.store));
    expect(still).toMatchObject({ days, found: 'out' });
    expect(still).not.toHaveProperty('pulls');
  });

  it('gathers those of the same type and class and no others', async () => {
    const gathered = have(await historyOfKind(worked, shop.store));
    expect(gathered.map(({ found }) => found).toSorted()).toEqual(['in', 'out']);
    expect(have(await historyOfKind(other, shop.store))).toHaveLength(1);
  });
});
