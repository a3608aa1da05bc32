import { expect, it } from 'vitest';
import { flood } from './flood.ts';

it('loses none of the pulls that it acknowledged in a flood, though the server is killed', async () => {
  const { sent, acknowledged, lost } = await flood({ perSecond: 4000, seconds: 2 });
  expect({ sent, acknowledged, lost }).toEqual({ sent: 8000, acknowledged: 8000, lost: 0 });
});
