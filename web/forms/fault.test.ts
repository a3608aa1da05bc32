import { expect, it } from 'vitest';
import { type Fault, faultAt, faultsWithin } from './fault.ts';

const needed = (field: string): Fault => ({ field, finding: { kind: 'needed' } });

it('puts a refusal of a part at its place in the whole', () => {
  const failure = { kind: 'invalid', field: 'unit', message: 'no unit', expected: 'N·m' } as const;
  expect(faultAt('stages[0].torque', failure).field).toBe('stages[0].torque.unit');
  expect(faultAt('stages[0].torque', { ...failure, field: '(whole input)' }).field).toBe('stages[0].torque');
});

it('finds what lies inside of a place, and not what only begins alike', () => {
  const faults = ['stages[1].torque', 'stages[10].torque', 'stages[1]', 'stages[1].rounds[0].share'].map(needed);
  expect(faultsWithin(faults, 'stages[1]').map(({ field }) => field)).toEqual([
    'stages[1].torque',
    'stages[1]',
    'stages[1].rounds[0].share',
  ]);
});

it('leaves out what a field of its own shows', () => {
  const faults = ['joints', 'joints[0].label'].map(needed);
  expect(faultsWithin(faults, 'joints', ['joints[0].label']).map(({ field }) => field)).toEqual(['joints']);
});
