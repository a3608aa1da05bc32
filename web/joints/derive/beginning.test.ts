import { describe, expect, it } from 'vitest';
import { BLANK_JOINT } from '../form/blank.ts';
import { beginningFrom, begunWith } from './beginning.ts';
import { blankDerive } from './derive-form.ts';

describe('a derivation begun on Bench', () => {
  it('takes along what the calculation knows', () => {
    const input = {
      thread: 'M12',
      propertyClass: '8.8',
      threadFriction: 0.12,
      bearingFriction: 0.14,
      utilization: 0.85,
    };
    const form = begunWith(blankDerive(BLANK_JOINT, 'de'), beginningFrom(input), 'de');
    expect(form).toMatchObject({
      thread: 'M12',
      propertyClass: '8.8',
      threadFriction: '0,12',
      bearingFriction: '0,14',
      utilizationPercent: '85',
    });
  });

  it('leaves out what is not of its kind, and what a form knows already stays', () => {
    expect(beginningFrom({ thread: 'M12', threadFriction: { value: 0.12 }, propertyClass: 8.8 })).toEqual({
      thread: 'M12',
    });
    expect(begunWith(blankDerive(BLANK_JOINT, 'en'), { thread: 'M12' }, 'en').utilizationPercent).toBe('90');
  });

  it.each([undefined, null, 'M12', {}, { thread: '' }, { thread: 12 }])('is none without a thread: %j', (value) => {
    expect(beginningFrom(value)).toBeUndefined();
  });

  it('changes nothing where nothing is brought', () => {
    const form = blankDerive(BLANK_JOINT, 'en');
    expect(begunWith(form, undefined, 'en')).toBe(form);
  });
});
