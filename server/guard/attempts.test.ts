import { describe, expect, it } from 'vitest';
import { attempts } from './attempts.ts';

const MINUTE_MS = 60_000;

describe('attempts', () => {
  it('lets five be tried, then tells how long to wait', () => {
    const counted = attempts();
    const waits = [0, 1, 2, 3, 4, 5].map((second) => counted.begin('anna', second * 1000));
    expect(waits).toEqual([undefined, undefined, undefined, undefined, undefined, 895]);
  });

  it('lets one try again once the oldest is a quarter of an hour ago', () => {
    const counted = attempts();
    for (let minute = 0; minute < 5; minute++) counted.begin('anna', minute * MINUTE_MS);
    expect(counted.begin('anna', 14.9 * MINUTE_MS)).toBeDefined();
    expect(counted.begin('anna', 15 * MINUTE_MS)).toBeUndefined();
  });

  it('forgets the wrong ones after a right one', () => {
    const counted = attempts();
    for (let time = 0; time < 5; time++) counted.begin('anna', time);
    counted.succeed('anna');
    expect(counted.begin('anna', 6)).toBeUndefined();
  });

  it('counts each person alone', () => {
    const counted = attempts();
    for (let time = 0; time < 5; time++) counted.begin('anna', time);
    expect(counted.begin('bero', 6)).toBeUndefined();
  });
});
