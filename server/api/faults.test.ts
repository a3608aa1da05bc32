import { FAULTS as PLAYED } from '@clampwright/intake/simulated';
import { expect, it } from 'vitest';
import { FAULTS } from './contract.ts';

it('offers the faults that the simulated wrench can play, and no others', () => {
  expect([...FAULTS]).toEqual([...PLAYED]);
});
