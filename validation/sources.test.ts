import { describe, expect, it } from 'vitest';
import { outcomeOf } from './check.ts';
import { SOURCES } from './sources.ts';

describe.each(SOURCES)('$source [$howWeHaveIt]', ({ checks }) => {
  it.each(checks)('$name is $theirs.value $theirs.unit', (check) => {
    const outcome = outcomeOf(check);
    expect(outcome).toMatchObject({ holds: true });
  });
});
