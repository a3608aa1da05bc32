import type { LiveReading } from '@clampwright/server/contract';
import { useEffect, useEffectEvent, useState } from 'react';
import { having } from '../../../app/api.ts';

/** `refused`: the server does not let this person listen. */
export type Listening = 'not' | 'opening' | 'open' | 'lost' | 'refused';

const isReading = having<LiveReading>('torqueNm', 'from');

/** Listens to readings at an address of the server while one is given. */
export function useLiveReadings(address: string | undefined, hear: (reading: LiveReading) => void): Listening {
  const [known, setKnown] = useState<{ readonly address: string; readonly state: Listening }>();
  const told = useEffectEvent(hear);
  useEffect(() => {
    if (address === undefined) return undefined;
    const stream = new EventSource(address);
    const setState = (state: Listening) => setKnown({ address, state });
    stream.addEventListener('open', () => setState('open'));
    stream.addEventListener('error', () => setState(stream.readyState === EventSource.CLOSED ? 'refused' : 'lost'));
    stream.addEventListener('message', (message: MessageEvent<unknown>) => {
      const reading: unknown = typeof message.data === 'string' ? JSON.parse(message.data) : undefined;
      if (isReading(reading)) told(reading);
    });
    return () => stream.close();
  }, [address]);
  if (address === undefined) return 'not';
  return known?.address === address ? known.state : 'opening';
}
