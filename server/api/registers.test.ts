import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { aWrench, bracketContent, have, identity, jobOnBracket, type Workshop, workshop } from '../testing/workshop.ts';
import { jobSchema, jointHistorySchema, todaySchema, toolboxSchema } from './contract.ts';

let shop: Workshop;
let lead: string;
let keeper: string;
beforeAll(async () => {
  shop = await workshop();
  lead = await shop.signIn('lead');
  keeper = await shop.signIn('keeper');
});
afterAll(() => shop.close());

describe('the toolbox', () => {
  const { calibration, ...uncalibrated } = aWrench('0500');

  it('calls for a wrench until it has been calibrated', async () => {
    expect((await shop.ask('POST', '/toolbox/wrenches', uncalibrated, keeper)).status).toBe(201);
    expect(todaySchema.parse((await shop.ask('GET', '/today')).body).wrenches).toMatchObject([
      { wrench: { serial: 'KH-0500' }, state: 'never' },
    ]);
    const path = `/toolbox/wrenches/${uncalibrated.id}/calibrations`;
    expect((await shop.ask('POST', path, calibration, keeper)).body).toMatchObject({ serial: 'KH-0500', calibration });
    expect((await shop.ask('GET', path)).body).toEqual([calibration]);
    expect(todaySchema.parse((await shop.ask('GET', '/today')).body).wrenches).toEqual([]);
    expect(toolboxSchema.parse((await shop.ask('GET', '/toolbox')).body).wrenches).toMatchObject([{ calibration }]);
  });

  it('keeps the same adapter once, and refuses another one under its identity', async () => {
    const adapter = { id: identity('crow foot'), name: 'Crow foot 24', lengthMm: 40, angleDeg: 0 };
    expect((await shop.ask('POST', '/toolbox/adapters', adapter, keeper)).status).toBe(201);
    expect((await shop.ask('POST', '/toolbox/adapters', adapter, keeper)).status).toBe(201);
    expect((await shop.ask('POST', '/toolbox/adapters', { ...adapter, lengthMm: 41 }, keeper)).body).toMatchObject({
      status: 409,
      current: { lengthMm: 40 },
    });
  });
});

describe('joints', () => {
  it('begin a new revision after a release, while running jobs keep theirs', async () => {
    const jobId = await jobOnBracket(shop);
    const jointId = identity('bracket');
    const changed = { ...bracketContent, name: 'Bracket, longer' };
    expect((await shop.ask('POST', '/joints', { id: jointId, content: changed }, lead)).body).toMatchObject({
      revision: 2,
      status: 'draft',
    });
    expect(jointHistorySchema.parse((await shop.ask('GET', `/joints/${jointId}`)).body).revisions).toMatchObject([
      { revision: 1, status: 'released', content: { name: bracketContent.name } },
      { revision: 2, status: 'draft' },
    ]);
    expect((await shop.ask('GET', '/joints')).body).toMatchObject([
      { positions: 4, latestRevision: 2, latestStatus: 'draft', releasedRevision: 1 },
    ]);
    const { sheet } = jobSchema.parse((await shop.ask('GET', `/jobs/${jobId}`)).body);
    expect(sheet.joints[0]?.joint).toMatchObject({ revision: 1, content: { name: bracketContent.name } });
  });

  it('put the asset of a job into the register', async () => {
    expect(have(await shop.store.assets.list())).toMatchObject([{ name: 'Tower 3' }]);
    expect((await shop.ask('GET', '/assets')).body).toMatchObject([{ name: 'Tower 3' }]);
  });
});
