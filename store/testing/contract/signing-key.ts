import { copyFile, readdir, stat, unlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { publicKeyOf } from '@clampwright/core/record';
import { describe, expect, it } from 'vitest';
import { failureOf, freshFolder, type OpenStore, storeIn, valueOf } from './folder.ts';

export function keepsSigningKey(open: OpenStore): void {
  describe('the signing key', () => {
    it('is made once and stays the same', async () => {
      const folder = await freshFolder();
      const first = valueOf(await (await storeIn(folder, open)).signingKey());
      const again = valueOf(await (await storeIn(folder, open)).signingKey());
      expect(again).toEqual(first);
      expect(first.seed).toHaveLength(32);
      expect(first.publicKey).toBe(publicKeyOf(first.seed));
    });

    it('is one key when two stores want it at once', async () => {
      const folder = await freshFolder();
      const stores = [await storeIn(folder, open), await storeIn(folder, open)];
      const [one, other] = await Promise.all(stores.map((store) => store.signingKey()));
      expect(valueOf(one!)).toEqual(valueOf(other!));
    });

    it.skipIf(process.platform === 'win32')('can be read by its owner alone', async () => {
      const folder = await freshFolder();
      valueOf(await (await storeIn(folder, open)).signingKey());
      expect((await stat(join(folder, 'signing-key'))).mode & 0o777).toBe(0o600);
      expect(await readdir(folder)).not.toContain('signing-key.new');
    });

    it('is not made anew when the file was lost', async () => {
      const folder = await freshFolder();
      const store = await storeIn(folder, open);
      valueOf(await store.signingKey());
      await unlink(join(folder, 'signing-key'));
      expect(failureOf(await store.signingKey())).toMatchObject({
        kind: 'unavailable',
        message: expect.stringContaining('missing'),
      });
      expect(await readdir(folder)).not.toContain('signing-key');
    });

    it('is refused when the file was exchanged or cut off', async () => {
      const [folder, other] = [await freshFolder(), await freshFolder()];
      const store = await storeIn(folder, open);
      valueOf(await store.signingKey());
      valueOf(await (await storeIn(other, open)).signingKey());
      await copyFile(join(other, 'signing-key'), join(folder, 'signing-key'));
      expect(failureOf(await store.signingKey())).toMatchObject({ message: expect.stringContaining('not the one') });
      await writeFile(join(folder, 'signing-key'), 'short');
      expect(failureOf(await store.signingKey())).toMatchObject({ message: expect.stringContaining('damaged') });
    });
  });
}
