import { get } from 'node:http';
import { createInterface } from 'node:readline';
import { PassThrough } from 'node:stream';

/** Listens to server-sent events, until it is ended; resolves once the server has answered. */
export function eventsOf(url: string, hear: (data: string) => void): Promise<() => void> {
  return new Promise((answered, broke) => {
    const asked = get(url, { agent: false }, (response) => {
      // The end of the listening breaks the answer off.
      response.on('error', () => undefined);
      createInterface({ input: response.pipe(new PassThrough()) }).on('line', (line) => {
        if (line.startsWith('data: ')) hear(line.slice(6));
      });
      answered(() => asked.destroy());
    });
    asked.on('error', broke);
  });
}
