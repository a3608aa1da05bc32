import { existsSync } from 'node:fs';
import { failed } from '@clampwright/core/failure';
import type { Outcome } from '@clampwright/server';
import { openStore, type Store } from '@clampwright/store';

type Work<T> = (store: Store) => Promise<Outcome<T>>;

/** Opens the store for one command and closes it behind; a folder that is not there is made. */
export async function withNewStore<T>(folder: string, work: Work<T>): Promise<Outcome<T>> {
  const store = await openStore(folder);
  if (!store.ok) return store;
  try {
    return await work(store.value);
  } finally {
    await store.value.close();
  }
}

/** Opens a store that must be there: a folder mistyped is told, not made. */
export async function withStore<T>(folder: string, work: Work<T>): Promise<Outcome<T>> {
  if (existsSync(folder)) return withNewStore(folder, work);
  return failed({
    kind: 'unavailable',
    message: `There is no data folder ${folder}.`,
    remedy: 'Name the folder with --data; `clampwright serve` makes one.',
  });
}
