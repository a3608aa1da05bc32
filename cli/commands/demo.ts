import { ok } from '@clampwright/core/failure';
import type { Outcome } from '@clampwright/server';
import { dataFolder } from '../data-folder.ts';
import { loadDemo } from '../load-demo.ts';
import { withNewStore, withStore } from '../open.ts';
import { answer, remark } from '../say.ts';

interface Wanted {
  readonly data?: string;
}

export async function load({ data }: Wanted): Promise<Outcome<0>> {
  const folder = dataFolder(data);
  remark('Loading the invented demonstration …');
  const loaded = await withNewStore(folder, (store) => loadDemo(store, new Date()));
  if (!loaded.ok) return loaded;
  answer(`The invented demonstration is in ${folder}. Remove it with \`clampwright demo remove\`.`);
  return ok(0);
}

export async function remove({ data }: Wanted): Promise<Outcome<0>> {
  const removed = await withStore(dataFolder(data), (store) => store.demo.remove());
  if (!removed.ok) return removed;
  answer('The invented demonstration is removed; your own joints, wrenches and jobs are as they were.');
  return ok(0);
}
