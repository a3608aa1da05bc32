/** Aborted when somebody ends the command: interrupts it, ends it, or closes its terminal. A second time ends it at once. */
export function ending(): AbortSignal {
  const controller = new AbortController();
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, () => controller.abort());
  return controller.signal;
}
