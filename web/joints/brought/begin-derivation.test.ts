import type { OwnBolt } from '@clampwright/core/fastener';
import { describe, expect, it } from 'vitest';
import { blankDerive } from '../derive/derive-form.ts';
import { BLANK_JOINT } from '../form/blank.ts';
import { begunWith } from './begin-derivation.ts';
import { broughtIn } from './brought.ts';

const NO_BOLTS = { bolts: [] };

describe('a derivation begun on Bench', () => {
  it('takes along what the calculation knows', () => {
    const brought = broughtIn({
      thread: 'M12',
      propertyClass: '8.8',
      derive: { threadFriction: 0.12, bearingFriction: 0.14, utilization: 0.85, tighteningFactor: 1.7 },
    });
    expect(begunWith(blankDerive(BLANK_JOINT, 'de'), brought, NO_BOLTS, 'de')).toMatchObject({
      thread: 'M12',
      propertyClass: '8.8',
      threadFriction: '0,12',
      bearingFriction: '0,14',
      utilizationPercent: '85',
      tighteningFactor: '1,7',
    });
  });

  it('leaves out what is not of its kind, and what a form knows already stays', () => {
    const brought = broughtIn({ thread: 'M12', propertyClass: 8.8, derive: { threadFriction: { value: 0.12 } } });
    expect(brought?.propertyClass).toBeUndefined();
    const form = begunWith(blankDerive(BLANK_JOINT, 'en'), brought, NO_BOLTS, 'en');
    expect([form.threadFriction, form.utilizationPercent]).toEqual(['', '90']);
  });

  it.each([undefined, null, 'M12', {}, { thread: '' }, { thread: 12 }])('is none without a thread: %j', (value) => {
    expect(broughtIn(value)).toBeUndefined();
  });

  it('finds the own bolt of the calculation among the workshop’s rows by its designation', () => {
    const bolt: OwnBolt = {
      id: '01991f3c-0000-7000-8000-000000000023',
      kind: 'bolt',
      name: 'Tie rod 23',
      source: 'Drawing KH-114',
      system: 'ISO metric',
      majorDiameterMm: 23,
      pitchMm: 2,
      by: { id: '01991f3c-0000-7000-8000-000000000009', name: 'Lead' },
      addedAt: '2026-03-02T06:00:00.000Z',
    };
    const brought = broughtIn({ thread: bolt.name, derive: {} });
    expect(begunWith(blankDerive(BLANK_JOINT, 'en'), brought, { bolts: [bolt] }, 'en').bolt).toBe(bolt.id);
    expect(begunWith(blankDerive(BLANK_JOINT, 'en'), brought, NO_BOLTS, 'en').bolt).toBe('designation');
  });

  it('changes nothing where nothing is brought', () => {
    const form = blankDerive(BLANK_JOINT, 'en');
    expect(begunWith(form, undefined, NO_BOLTS, 'en')).toBe(form);
  });
});
