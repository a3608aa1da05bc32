import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { invalid, ok, type Result } from '@clampwright/core/failure';
import { startServer } from '@clampwright/server';
import { openStore, type Store } from '@clampwright/store';
import { loadDemo } from '../load-demo.ts';
import { dataFolder } from '../open.ts';
import { endWith } from '../say.ts';

const WEB_FOLDER = fileURLToPath(new URL('../../../web/dist/app', import.meta.url));

/** `clampwright serve`: opens the data folder, loads the demo on the first start, serves until interrupted. */
export async function serve({
  data,
  port,
  demo,
}: {
  readonly data?: string;
  readonly port?: string;
  readonly demo: boolean;
}): Promise<void> {
  const asked = readPort(port);
  if (!asked.ok) return endWith(asked.failure);
  const folder = dataFolder(data);
  const store = await openStore(folder);
  if (!store.ok) return endWith(store.failure);
  if (demo) await firstDemo(store.value);
  const webFolder = existsSync(WEB_FOLDER) ? WEB_FOLDER : undefined;
  const server = await startServer({
    store: store.value,
    ...(asked.value === undefined ? {} : { port: asked.value }),
    ...(webFolder ? { webFolder } : {}),
  });
  if (!server.ok) {
    await store.value.close();
    return endWith(server.failure);
  }
  process.stdout.write(`Data in ${folder}\nhttp://127.0.0.1:${server.value.port}\n`);
  if (!webFolder)
    process.stderr.write('The browser client is not built: `npm run build`. The API is served without it.\n');
  const stop = (): void => {
    void server.value
      .close()
      .then(() => store.value.close())
      .then(() => process.exit(0));
  };
  process.once('SIGINT', stop);
  process.once('SIGTERM', stop);
}

function readPort(port: string | undefined): Result<number | undefined> {
  if (port === undefined) return ok(undefined);
  const number = Number(port);
  if (Number.isInteger(number) && number >= 0 && number <= 65_535) return ok(number);
  return invalid('--port', `${port} is not a port`, 'a whole number from 0 to 65535; 0 takes a free one');
}

/** The demo comes once; whoever removed it is not given it again. */
async function firstDemo(store: Store): Promise<void> {
  const state = await store.demo.state();
  if (!state.ok) return endWith(state.failure);
  if (state.value !== 'never-loaded') return;
  const jobs = await store.jobs.list();
  if (!jobs.ok) return endWith(jobs.failure);
  if (jobs.value.some((job) => !job.demo)) return;
  process.stderr.write('First start: loading the invented demonstration …\n');
  const loaded = await loadDemo(store, new Date());
  if (!loaded.ok) endWith(loaded.failure);
}
