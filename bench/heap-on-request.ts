/* Loaded into the process that is measured: tells its heap when it is asked, once what nobody needs is thrown away. */

process.on('message', () => {
  globalThis.gc?.();
  process.send?.({ heapMb: process.memoryUsage().heapUsed / 2 ** 20 });
});
// Being asked is no reason to go on.
process.channel?.unref();
