import { describe, expect, it } from 'vitest';
import { EXAMPLE_JOINT, EXAMPLE_TOOL } from './example.ts';
import { FAULTS } from './fault.ts';
import { modelFor } from './model-for.ts';
import { FOUND_AS, finder, PRACTICES } from './testing/finder.ts';

const made = modelFor(EXAMPLE_JOINT, EXAMPLE_TOOL);
if (!made.ok) throw new Error('the example has a model');
const model = made.value;

// `scripts/traces.js` counts over many more; here so few that one miss fails
const SEEDS = Array.from({ length: 6 }, (_, n) => 5000 + n);
const SOUND_SEEDS = Array.from({ length: 40 }, (_, n) => 7000 + n);

describe.each(['torque', 'angle'] as const)('what is found on pulls by %s', (practice) => {
  const found = finder(model, PRACTICES[practice]);

  it.each(FAULTS.filter((fault) => FOUND_AS[fault] !== undefined))('%s', (fault) => {
    for (const seed of SEEDS) expect(found(fault, seed)).toContain(FOUND_AS[fault]);
  });

  it('nothing on sound ones', () => {
    for (const seed of SOUND_SEEDS) expect(found('none', seed)).toEqual([]);
  });
});
