import { LUBRICATIONS } from '@clampwright/core/fastener';
import { expect, it } from 'vitest';
import { METHODS } from './methods.ts';
import { lubricantKey, methodKey, surfaceKey } from './table-keys.ts';

it.each(LUBRICATIONS)('there are words for $surface, $lubricant', ({ surface, lubricant }) => {
  expect([surfaceKey(surface), lubricantKey(lubricant)]).not.toContain('');
});

it('there are words for every way of tightening by torque', () => {
  expect(METHODS.map(({ row }) => methodKey(row.method))).toEqual(['tested', 'estimated-b', 'estimated-a']);
});
