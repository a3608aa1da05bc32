import { chain, decide } from '@clampwright/core/record';
import { describe, expect, it } from 'vitest';
import { firstEntries, hubSheet, instant, pullNumber, technician } from '../testing/workshop.ts';
import { stateAfter, stateOf } from './folded-jobs.ts';
import { progressOf } from './progress.ts';

const sheet = hubSheet('tower 3');

/** Counts every cell, with nothing remembered. */
function counted(state: ReturnType<typeof stateOf>) {
  const cells = state.joints.flatMap((joint) => joint.cells.flat());
  return { done: cells.filter(({ need }) => need === 'nothing').length, total: cells.length };
}

describe('progress', () => {
  it('is the number of cells that wait for nothing, after each entry', () => {
    let state = stateOf(firstEntries(sheet));
    for (let n = 0; n < 30; n++) {
      const shownTorqueNm = n % 4 === 0 ? 50 : 30;
      const drafts = decide(state, pullNumber(sheet.id, n, { shownTorqueNm }), {
        entryId: '',
        now: instant(10 + n),
        by: technician,
      });
      if (!drafts.ok) throw new Error(JSON.stringify(drafts.failure));
      for (const entry of chain(state, drafts.value)) state = stateAfter(state, entry);
      expect(progressOf(state)).toEqual(counted(state));
    }
    expect(progressOf(state)).toEqual({ done: 12 - 3, total: 24 });
  });
});
