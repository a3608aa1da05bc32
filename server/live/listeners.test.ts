import { describe, expect, it } from 'vitest';
import type { LiveEvent } from '../api/contract.ts';
import { listeners } from './listeners.ts';

const event = { kind: 'entries', afterSeq: 3 } as const;
const ignore = (): void => undefined;

describe('listeners', () => {
  it('tells those who listen to the job, and no others', () => {
    const live = listeners();
    const heard: (readonly [string, LiveEvent])[] = [];
    live.listen('flange', (told) => heard.push(['flange', told]));
    live.listen('hub', (told) => heard.push(['hub', told]));
    live.tell('flange', event);
    expect(heard).toEqual([['flange', event]]);
  });

  it('tells nothing after the listener has gone', () => {
    const live = listeners();
    const heard: LiveEvent[] = [];
    const stop = live.listen('flange', (told) => heard.push(told));
    stop?.();
    live.tell('flange', event);
    expect(heard).toEqual([]);
  });

  it('takes no more than agreed, until somebody goes', () => {
    const live = listeners(2);
    const stop = live.listen('flange', ignore);
    live.listen('flange', ignore);
    expect(live.listen('hub', ignore)).toBeUndefined();
    stop?.();
    stop?.();
    expect(live.listen('hub', ignore)).toBeDefined();
    expect(live.listen('hub', ignore)).toBeUndefined();
  });

  it('says when the first comes and when the last goes', () => {
    const live = listeners();
    const presence: boolean[] = [];
    live.onPresence((someoneListens) => presence.push(someoneListens));
    const stops = [live.listen('flange', ignore), live.listen('hub', ignore)];
    for (const stop of stops) stop?.();
    expect(presence).toEqual([true, false]);
    expect(live.heard()).toEqual([]);
  });
});
