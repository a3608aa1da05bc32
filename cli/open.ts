import type { Result } from '@clampwright/core/failure';
import { openStore, type Store } from '@clampwright/store';
import { defaultDataFolder } from './data-folder.ts';
import { endWith } from './say.ts';

/** The data folder that was asked for, or the platform's own. */
export const dataFolder = (asked: string | undefined): string =>
  asked ?? defaultDataFolder(process.platform, process.env);

/** Opens the store for one command and closes it behind; a failure ends the command with what to do. */
export async function withStore<T>(asked: string | undefined, work: (store: Store) => Promise<Result<T>>): Promise<T> {
  const store = await openStore(dataFolder(asked));
  if (!store.ok) return endWith(store.failure);
  const done = await work(store.value);
  await store.value.close();
  return done.ok ? done.value : endWith(done.failure);
}
