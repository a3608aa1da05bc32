import { describe, expect, it } from 'vitest';
import { listeners } from './listeners.ts';
import { liveStream } from './stream.ts';

const JOB = 'flange';
const torque = (torqueNm: number) => ({ kind: 'torque', jointRef: 'J1', torqueNm, angleDeg: 0 }) as const;
const entries = (afterSeq: number) => ({ kind: 'entries', afterSeq }) as const;

function listening() {
  const live = listeners();
  const closing = new AbortController();
  const response = liveStream(JOB, live, closing.signal);
  if (!response) throw new Error('nobody else listens');
  return { live, closing, response };
}

describe('liveStream', () => {
  it('sends each event as one JSON object', async () => {
    const { live, closing, response } = listening();
    live.tell(JOB, torque(12.5));
    live.tell(JOB, entries(7));
    closing.abort();
    const said = await response.text();
    const told = said.split('\n\n').filter((part) => part.startsWith('data: '));
    expect(told.map((part): unknown => JSON.parse(part.slice(6)))).toEqual([torque(12.5), entries(7)]);
  });

  it('stops listening when the browser goes away', async () => {
    const { live, response } = listening();
    await response.body?.cancel();
    expect(live.heard()).toEqual([]);
  });

  it('drops torque figures, but not the news of entries, for a listener who is slow', async () => {
    const { live, closing, response } = listening();
    for (let i = 0; i < 1000; i++) live.tell(JOB, torque(i));
    live.tell(JOB, entries(7));
    closing.abort();
    const said = await response.text();
    expect(said.match(/"kind":"torque"/g)?.length).toBe(128);
    expect(said).toContain('"afterSeq":7');
  });

  it('lets a listener go who does not even take the news of entries', async () => {
    const { live, response } = listening();
    for (let i = 0; i < 1000; i++) live.tell(JOB, entries(i));
    expect(live.heard()).toEqual([]);
    expect(await response.text()).toContain('"afterSeq":1}');
  });

  it('ends at once when the server is closing already', async () => {
    const live = listeners();
    const response = liveStream(JOB, live, AbortSignal.abort());
    expect(await response?.text()).toBe(': listening\n\n');
    expect(live.heard()).toEqual([]);
  });
});
