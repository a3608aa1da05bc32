import { describe, expect, it } from 'vitest';
import { explain } from './explain.ts';

const coded = (code: string): Error => Object.assign(new Error('refused'), { code });

describe('what the disk or the database refuses', () => {
  it.for([
    ['SQLITE_FULL', 'full'],
    ['ENOSPC', 'full'],
    ['SQLITE_READONLY_DIRECTORY', 'cannot be written'],
    ['SQLITE_CANTOPEN', 'cannot be written'],
    ['EACCES', 'cannot be written'],
    ['SQLITE_IOERR_FSYNC', 'refuses to read or write'],
    ['SQLITE_CORRUPT_VTAB', 'damaged'],
    ['SQLITE_BUSY_SNAPSHOT', 'another process'],
  ] as const)('%s is told as: %s', ([code, words]) => {
    const failure = explain(coded(code));
    expect(failure?.kind === 'unavailable' && failure.message.toLowerCase()).toContain(words);
    expect(failure?.kind === 'unavailable' && failure.remedy.length).toBeGreaterThan(10);
  });

  it.for(['SQLITE_CONSTRAINT_TRIGGER', 'SQLITE_ERROR', 'ERR_INVALID_ARG_TYPE'])('%s is a bug', (code) => {
    expect(explain(coded(code))).toBeUndefined();
  });

  it('an error without a code is a bug', () => {
    expect(explain(new TypeError('x is not a function'))).toBeUndefined();
    expect(explain('thrown text')).toBeUndefined();
  });
});
