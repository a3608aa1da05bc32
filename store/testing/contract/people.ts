import { describe, expect, it } from 'vitest';
import { identity, instant } from '../workshop.ts';
import { failureOf, freshStore, type OpenStore, valueOf } from './folder.ts';

const ilse = {
  id: identity('technician'),
  name: 'Ilse Marbach',
  role: 'technician',
  pinHash: '$argon2id$ilse',
} as const;

export function keepsPeople(open: OpenStore): void {
  describe('people', () => {
    it('are listed without what proves who they are', async () => {
      const { people } = await freshStore(open);
      valueOf(await people.add(ilse));
      valueOf(await people.add({ id: identity('reader'), name: 'Guest', role: 'reader', pinHash: undefined }));
      const listed = valueOf(await people.list());
      expect(listed.map(({ name, hasPin }) => [name, hasPin])).toEqual([
        ['Guest', false],
        ['Ilse Marbach', true],
      ]);
      expect(JSON.stringify(listed)).not.toContain('argon2id');
      expect(valueOf(await people.get(ilse.id)).pinHash).toBe('$argon2id$ilse');
    });

    it('are kept once, and nobody takes the place of another', async () => {
      const { people } = await freshStore(open);
      valueOf(await people.add(ilse));
      valueOf(await people.add({ ...ilse, pinHash: '$argon2id$salted otherwise' }));
      expect(valueOf(await people.get(ilse.id)).pinHash).toBe('$argon2id$ilse');
      const conflict = failureOf(await people.add({ ...ilse, role: 'lead' }));
      expect(conflict.kind).toBe('conflict');
      expect(JSON.stringify(conflict)).not.toContain('argon2id');
    });

    it('stay signed in until they sign out or the time is over', async () => {
      const { people, sessions } = await freshStore(open);
      valueOf(await people.add(ilse));
      for (const tokenHash of ['a', 'b'])
        valueOf(await sessions.begin({ tokenHash, personId: ilse.id, expiresAt: instant(60) }));
      expect(valueOf(await sessions.find('a', instant(59))).personId).toBe(ilse.id);
      expect(failureOf(await sessions.find('a', instant(60))).kind).toBe('not-found');
      valueOf(await sessions.end('a', instant(10)));
      valueOf(await sessions.end('unknown', instant(10)));
      expect(failureOf(await sessions.find('a', instant(11))).kind).toBe('not-found');
      expect(valueOf(await sessions.find('b', instant(11))).personId).toBe(ilse.id);
    });

    it('sign in only when they are known', async () => {
      const { sessions } = await freshStore(open);
      expect(
        failureOf(await sessions.begin({ tokenHash: 'a', personId: identity('nobody'), expiresAt: instant(60) })).kind,
      ).toBe('not-found');
    });
  });

  describe('what is kept by name', () => {
    it('is a mapping, replaced when it is saved again', async () => {
      const { mappings } = await freshStore(open);
      valueOf(await mappings.save('Test bench', { torque: { column: 3, unit: 'N·m' } }));
      valueOf(await mappings.save('Test bench', { torque: { column: 4, unit: 'N·m' } }));
      expect(valueOf(await mappings.list())).toEqual([
        { name: 'Test bench', mapping: { torque: { column: 4, unit: 'N·m' } }, demo: false },
      ]);
      expect(failureOf(await mappings.get('Other bench'))).toEqual({
        kind: 'not-found',
        what: 'mapping',
        id: 'Other bench',
      });
    });

    it('is a setting', async () => {
      const { settings } = await freshStore(open);
      expect(valueOf(await settings.get('language'))).toBeUndefined();
      for (const value of ['de', 'fr']) valueOf(await settings.set('language', value));
      expect(valueOf(await settings.get('language'))).toBe('fr');
    });
  });
}
