import { describe, expect, it } from 'vitest';
import { numberFault, torqueFault } from './figure-fault.ts';

describe('a typed number', () => {
  it.each([
    ['en', '12.5'],
    ['de', '12,5'],
    ['fr', '1 234,5'],
    ['es', '85'],
  ] as const)('has no fault in %s as “%s”', (language, text) => {
    expect(numberFault(text, language)).toBeUndefined();
  });

  it('tells both readings where it is ambiguous', () => {
    expect(numberFault('1,234', 'en')).toEqual({ kind: 'ambiguous', text: '1,234', whole: 1234, decimal: 1.234 });
    expect(numberFault(' 1.234 ', 'de')).toEqual({ kind: 'ambiguous', text: '1.234', whole: 1234, decimal: 1.234 });
  });

  it('is not read with the decimal sign of another language', () => {
    expect(numberFault('12,5', 'en')).toEqual({ kind: 'not-read', text: '12,5' });
    expect(numberFault('12.5', 'de')).toEqual({ kind: 'not-read', text: '12.5' });
  });
});

describe('a typed torque', () => {
  it('names the unit that was likely meant', () => {
    expect(torqueFault('50000', 'N·m', 'en')).toMatchObject({ kind: 'absurd', meant: 'lbf·in' });
  });

  it('is not negative', () => {
    expect(torqueFault('-5', 'N·m', 'en')).toEqual({ kind: 'negative', text: '-5' });
  });

  it('has no fault within what hands can do', () => {
    expect(torqueFault('85', 'lbf·ft', 'en')).toBeUndefined();
  });
});
