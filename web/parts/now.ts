import { useState } from 'react';

/** The time when this part of the screen was opened. */
export function useNow(): Date {
  const [now] = useState(() => new Date());
  return now;
}
