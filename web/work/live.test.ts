import { expect, it } from 'vitest';
import { afterEvent, type Live, type LiveWrench } from './live.ts';

const still = { torque: undefined, wrenches: [] };
const torque = { kind: 'torque', jointRef: 'J1', torqueNm: 42, angleDeg: 3 } as const;
const wrench = (wrenchId: string, state: LiveWrench['state']): LiveWrench => ({
  kind: 'wrench',
  wrenchId,
  state,
  detail: '',
});

it('shows the torque of the joint at hand and of no other', () => {
  expect(afterEvent(still, torque, 'J1').torque).toEqual(torque);
  expect(afterEvent(still, torque, 'J2').torque).toBeUndefined();
});

it('shows no torque once the pull has become an entry', () => {
  const pulling = afterEvent(still, torque, 'J1');
  expect(afterEvent(pulling, { kind: 'entries', afterSeq: 7 }, 'J1').torque).toBeUndefined();
});

it('keeps the latest word of each wrench', () => {
  const events = [wrench('a', 'connected'), wrench('b', 'connected'), wrench('a', 'lost')];
  const live = events.reduce<Omit<Live, 'isLost'>>((before, event) => afterEvent(before, event, 'J1'), still);
  expect(live.wrenches).toEqual([wrench('b', 'connected'), wrench('a', 'lost')]);
});
