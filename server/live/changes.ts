import type { Deps } from '../deps.ts';

const LOOK_EVERY_MS = 500;

type Watching = Pick<Deps, 'store' | 'listeners' | 'logger' | 'closing'>;

/**
 * Tells listeners of entries that another process appended, such as an import from the command line. Looks only
 * while somebody listens. Who listens may be told of what they know already, never left without what they do not.
 */
export function watchChanges({ store, listeners, logger, closing }: Watching): void {
  let timer: NodeJS.Timeout | undefined;
  let version = 0;
  const lastSeqs = new Map<string, number>();

  const look = async (): Promise<void> => {
    const seen = store.dataVersion();
    if (seen === version) return;
    version = seen;
    for (const jobId of listeners.heard()) {
      const job = await store.jobs.get(jobId);
      if (!job.ok || job.value.lastSeq === lastSeqs.get(jobId)) continue;
      lastSeqs.set(jobId, job.value.lastSeq);
      listeners.tell(jobId, { kind: 'entries', afterSeq: job.value.lastSeq - 1 });
    }
  };
  const stop = (): void => clearInterval(timer);
  listeners.onPresence((someoneListens) => {
    stop();
    if (!someoneListens || closing.aborted) return;
    version = store.dataVersion();
    lastSeqs.clear();
    timer = setInterval(
      () => void look().catch((error: unknown) => logger.error({ err: error }, 'looking for changes broke')),
      LOOK_EVERY_MS,
    );
  });
  closing.addEventListener('abort', stop);
}
