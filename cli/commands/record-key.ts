import { ok } from '@clampwright/core/failure';
import { keyFingerprint } from '@clampwright/core/record';
import type { Outcome } from '@clampwright/server';
import { dataFolder } from '../data-folder.ts';
import { withStore } from '../open.ts';
import { answer, toJson } from '../say.ts';

interface Wanted {
  readonly data?: string;
  readonly json?: true;
}

/** `clampwright record key`: what a reader compares a seal with. The secret half stays in the data folder. */
export async function showKey({ data, json }: Wanted): Promise<Outcome<0>> {
  const key = await withStore(dataFolder(data), (store) => store.signingKey());
  if (!key.ok) return key;
  const { publicKey } = key.value;
  const fingerprint = keyFingerprint(publicKey);
  answer(
    json
      ? toJson({ algorithm: 'Ed25519', publicKey, fingerprint })
      : `fingerprint  ${fingerprint}\npublic key   ${publicKey}  (Ed25519)`,
  );
  return ok(0);
}
