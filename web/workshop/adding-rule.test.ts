import type { Person } from '@clampwright/server/contract';
import { expect, it } from 'vitest';
import { addingRule } from './adding-rule.ts';

const person = (role: Person['role'], demo = false): Person => ({
  id: '01920000-0000-7000-8000-000000000001',
  name: 'A',
  role,
  hasPin: true,
  demo,
});
const OWN_LEAD = person('lead');
const DEMO_LEAD = person('lead', true);

it.each([
  ['nobody is known', [], null, 'first-lead'],
  ['only invented people are known', [DEMO_LEAD], null, 'first-lead'],
  ['an invented lead is at the screen and no other lead is known', [DEMO_LEAD], DEMO_LEAD, 'lead'],
  ['a lead is known and nobody is at the screen', [OWN_LEAD], null, 'ask'],
  ['the lead is at the screen', [OWN_LEAD], OWN_LEAD, 'lead'],
  ['a technician is at the screen', [OWN_LEAD], person('technician'), 'refused'],
  [
    'an invented lead is at the screen of a workshop with a lead of its own',
    [OWN_LEAD, DEMO_LEAD],
    DEMO_LEAD,
    'refused',
  ],
] as const)('when %s', (_when, people, me, rule) => {
  expect(addingRule(people, me)).toBe(rule);
});
