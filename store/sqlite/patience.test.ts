import { describe, expect, it } from 'vitest';
import { patiently, Turnstile } from './patience.ts';

const locked = (): Error => Object.assign(new Error('database is locked'), { code: 'SQLITE_BUSY' });

describe('patience', () => {
  it('tries again until the lock is free', async () => {
    let tries = 0;
    await patiently(() => {
      tries += 1;
      if (tries < 4) throw locked();
    });
    expect(tries).toBe(4);
  });

  it('has none with anything but a lock', async () => {
    await expect(
      patiently(() => {
        throw new TypeError('a bug');
      }),
    ).rejects.toThrow('a bug');
  });
});

describe('a turnstile', () => {
  it('lets one through at a time, in the order in which they came', async () => {
    const turnstile = new Turnstile();
    const seen: string[] = [];
    const pass = async (name: string): Promise<void> => {
      await turnstile.enter();
      seen.push(`${name} in`);
      await Promise.resolve();
      seen.push(`${name} out`);
      turnstile.leave();
    };
    await Promise.all(['a', 'b', 'c'].map(pass));
    expect(seen).toEqual(['a in', 'a out', 'b in', 'b out', 'c in', 'c out']);
    await pass('d');
    expect(seen.at(-1)).toBe('d out');
  });
});
