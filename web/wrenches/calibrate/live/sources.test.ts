import type { Device } from '@clampwright/core/device';
import { describe, expect, it } from 'vitest';
import { isComplete, keyOf, sourcesFor, withReading } from './sources.ts';

const device = (id: string, way: Device['way'], wrenchId?: string): Device => ({
  id,
  name: id,
  way,
  ...(wrenchId === undefined ? {} : { wrenchId }),
});
const http = { kind: 'http' } as const;
const folder = { kind: 'folder', path: '/in', mapping: 'm' } as const;
const wrench = { id: 'w1', connection: { kind: 'typed' } } as const;
const keys = (side: 'indicated' | 'reference', devices: Parameters<typeof sourcesFor>[2]) =>
  sourcesFor(side, wrench, devices).map(keyOf);

describe('what can be listened to in a calibration', () => {
  it('is each device for the reference, and what may tell this wrench for the wrench', () => {
    const devices = [
      device('own', http, wrench.id),
      device('other', http, 'w2'),
      device('gate', http),
      device('f', folder, wrench.id),
    ];
    expect(keys('indicated', devices)).toEqual(['hand', `wrench ${wrench.id}`, 'device gate', 'plugged']);
    expect(keys('reference', devices)).toEqual(['hand', 'device other', 'device gate', 'plugged']);
  });

  it('is no wrench where nothing tells its pulls', () => {
    expect(keys('indicated', [device('other', http, 'w2')])).toEqual(['hand', 'plugged']);
  });
});

describe('readings of a device', () => {
  it('count by their size, and not where another wrench is named', () => {
    expect(withReading({ reference: 20 }, 'indicated', { torqueNm: -20.4, from: [] }, 'KH-1')).toEqual({
      reference: 20,
      indicated: 20.4,
    });
    expect(withReading({}, 'indicated', { torqueNm: 20, from: ['KH-2'] }, 'KH-1')).toBeUndefined();
    expect(withReading({}, 'reference', { torqueNm: 20, from: ['KH-2'] }, 'KH-1')).toEqual({ reference: 20 });
  });

  it('make a comparison once every side that is told live has come', () => {
    expect(isComplete({ reference: 20 }, ['reference'])).toBe(true);
    expect(isComplete({ reference: 20 }, ['reference', 'indicated'])).toBe(false);
    expect(isComplete({ indicated: 20 }, ['indicated'])).toBe(false);
  });
});
