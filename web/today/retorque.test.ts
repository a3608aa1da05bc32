import { describe, expect, it } from 'vitest';
import { alike, isPast, type Retorque } from './retorque.ts';

const wheel: Retorque = {
  jobId: '0190a5f4-7b1c-7000-8000-000000000001',
  jobTitle: 'Wheels',
  assetName: 'Vehicle',
  closedAt: '2026-03-01T08:00:00.000Z',
  after: 50,
  unit: 'km',
  note: 'wheel nuts settle',
};
const flange: Retorque = { ...wheel, after: 2, unit: 'd', note: 'gasket settles' };

describe('joints to be tightened again', () => {
  it('stand together where the same job wants the same of them', () => {
    expect(alike([wheel, flange, wheel, wheel])).toEqual([
      { due: wheel, joints: 3 },
      { due: flange, joints: 1 },
    ]);
  });

  it('are past on the day that was set, and not before', () => {
    expect(isPast(flange, Date.parse('2026-03-03T08:00:00.000Z'))).toBe(true);
    expect(isPast(flange, Date.parse('2026-03-03T07:59:59.000Z'))).toBe(false);
  });

  it('are never told to be past by the calendar where the asset counts', () => {
    expect(isPast(wheel, Date.parse('2036-03-01T08:00:00.000Z'))).toBe(false);
  });
});
