import { loadDemo } from '../load-demo.ts';
import { dataFolder, withStore } from '../open.ts';

export async function load({ data }: { readonly data?: string }): Promise<void> {
  await withStore(data, (store) => loadDemo(store, new Date()));
  process.stdout.write(
    `The invented demonstration is in ${dataFolder(data)}. Remove it with \`clampwright demo remove\`.\n`,
  );
}

export async function remove({ data }: { readonly data?: string }): Promise<void> {
  await withStore(data, (store) => store.demo.remove());
  process.stdout.write('The invented demonstration is removed; your own joints, wrenches and jobs are as they were.\n');
}
