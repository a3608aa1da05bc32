import { afterEach, beforeEach, expect, it } from 'vitest';
import { aWrench, have, jobOnBracket, takeWrench, type Workshop, workshop } from '../testing/workshop.ts';

const MAPPING = {
  name: 'long',
  decimalSign: 'point',
  headerRow: true,
  position: 'position',
  torque: 'torque',
  torqueUnit: { unit: 'N·m' },
};
const LINES = 20_000;

let shop: Workshop;
let jobId: string;
let technician: string;
beforeEach(async () => {
  shop = await workshop();
  jobId = await jobOnBracket(shop);
  technician = await shop.signIn('technician');
  await takeWrench(shop, jobId, aWrench('0100'), technician);
});
afterEach(() => shop.close());

const send = (body: ReadableStream<Uint8Array>, mode: string) => {
  const query = new URLSearchParams({ mode, mapping: JSON.stringify(MAPPING) });
  const init = { method: 'POST', headers: { cookie: technician }, body, duplex: 'half' } as const;
  return shop.app.request(`/api/v1/jobs/${jobId}/imports?${query}`, init);
};

/** A file that comes as fast as it is taken; `seen` is told how many lines are stored when its end comes. */
function longFile(seen: (stored: number) => void): ReadableStream<Uint8Array> {
  const encoder = new TextEncoder();
  let line = 0;
  return new ReadableStream({
    start: (room) => room.enqueue(encoder.encode('position;torque\n')),
    pull: async (room) => {
      const upTo = Math.min(line + 100, LINES);
      let text = '';
      for (; line < upTo; line++) text += `${(line % 4) + 1};4${line % 3}.${line % 10}\n`;
      room.enqueue(encoder.encode(text));
      if (line < LINES) return;
      seen(have(await shop.store.jobs.get(jobId)).lastSeq);
      room.close();
    },
  });
}

it('has stored most of a long file before its end has come', async () => {
  let stored = 0;
  const response = await send(
    longFile((lastSeq) => (stored = lastSeq)),
    'good-lines',
  );
  expect(await response.json()).toMatchObject({ lines: LINES, added: LINES, refusedCount: 0 });
  expect(stored).toBeGreaterThan(0.9 * LINES);
});

it('keeps nothing of an all-or-nothing file that breaks off', async () => {
  const breaking = new ReadableStream<Uint8Array>({
    start: (room) => room.enqueue(new TextEncoder().encode('position;torque\n1;42.0\n')),
    pull: (room) => room.error(new Error('the browser went away')),
  });
  expect((await send(breaking, 'all-or-nothing')).status).toBe(500);
  expect(have(await shop.store.jobs.get(jobId)).lastSeq).toBe(2);
});
