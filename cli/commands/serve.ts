import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { ok, type Result } from '@clampwright/core/failure';
import { type Outcome, startServer } from '@clampwright/server';
import type { Store } from '@clampwright/store';
import { dataFolder } from '../data-folder.ts';
import { ending } from '../ending.ts';
import { loadDemo } from '../load-demo.ts';
import { withNewStore } from '../open.ts';
import { answer, remark } from '../say.ts';
import { type Watching, watchFolder } from '../watched-folder.ts';

/** Beside the command in the repository, seen from where this is compiled to. */
const WEB_FOLDER = fileURLToPath(new URL('../../../web/dist/app', import.meta.url));

interface Wanted extends Watching {
  readonly data?: string;
  readonly port?: number;
  readonly demo: boolean;
}

/** `clampwright serve`: opens the data folder, loads the demonstration on the first start, serves until it is ended. */
export async function serve({ data, port, demo, ...watching }: Wanted): Promise<Outcome<0>> {
  const folder = dataFolder(data);
  return withNewStore(folder, async (store) => {
    const loaded = demo ? await firstDemo(store) : ok(undefined);
    if (!loaded.ok) return loaded;
    const watched = await watchFolder(store, watching);
    if (!watched.ok) return watched;
    const webFolder = existsSync(WEB_FOLDER) ? WEB_FOLDER : undefined;
    const server = await startServer({ store, port, webFolder });
    if (!server.ok) return server;
    const end = ending();
    answer(`Data in ${folder}\n${server.value.url}`);
    if (!webFolder) remark('The browser client is not built: `npm run build`. The API is served without it.');
    await once(end, 'abort');
    await server.value.close();
    return ok(0);
  });
}

/** The demonstration comes once, and to nobody who has begun a workshop of their own. */
async function firstDemo(store: Store): Promise<Result<undefined>> {
  const state = await store.demo.state();
  if (!state.ok) return state;
  const people = await store.people.list();
  if (!people.ok) return people;
  if (state.value !== 'never-loaded' || people.value.some((person) => !person.demo)) return ok(undefined);
  remark('First start: loading the invented demonstration …');
  return loadDemo(store, new Date());
}
