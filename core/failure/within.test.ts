import { expect, it } from 'vitest';
import { within } from './within.ts';

const refusal = (field: string) => ({ kind: 'invalid', field, message: 'm', expected: 'e' }) as const;

it('puts the outer field before the inner', () => {
  expect(within('stages[0].order', refusal('positions[2]'))).toEqual(refusal('stages[0].order.positions[2]'));
  expect(within('quantities', refusal('[1].lower'))).toEqual(refusal('quantities[1].lower'));
});

it('leaves other failures as they are', () => {
  const conflict = { kind: 'conflict', message: 'm', current: null } as const;
  expect(within('stages', conflict)).toBe(conflict);
});
