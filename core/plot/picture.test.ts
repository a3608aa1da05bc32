import { expect, it } from 'vitest';
import { pictureInWords } from './picture.ts';

it('says in words what a plot reads, each name once', () => {
  const limit = { kind: 'limit', along: 'x', at: 3 } as const;
  const marks = [
    { ...limit, name: 'lower', reads: '3 kN' },
    { ...limit, name: 'lower', reads: '3 kN' },
    { ...limit, name: 'unread' },
  ];
  const plot = { x: { label: 'x' }, y: { label: 'y' }, marks };
  expect(pictureInWords({ kind: 'plot', title: 'Spread', plot }, 'en')).toBe('Spread. lower: 3 kN');
});

it('says each part, and the title alone where there is nothing more', () => {
  const parts = [{ name: 'pitch', share: 0.1, text: '10 %' }];
  expect(pictureInWords({ kind: 'shares', title: 'Shares', parts }, 'en')).toBe('Shares. pitch: 10 %');
  expect(pictureInWords({ kind: 'bars', title: 'Shares', parts: [] }, 'en')).toBe('Shares');
});

it('sets the colon as the language does', () => {
  const parts = [{ name: 'pas', share: 0.1, text: '10\u00a0%' }];
  expect(pictureInWords({ kind: 'shares', title: 'Parts', parts }, 'fr')).toBe('Parts. pas\u00a0: 10\u00a0%');
});
