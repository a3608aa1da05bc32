import { useEffect, useState } from 'react';

const STEP_MS = 650;

export interface Steps {
  /** 0 before the first, `count` when all of them are shown. */
  readonly at: number;
  readonly count: number;
  readonly isPlaying: boolean;
  readonly play: () => void;
  readonly pause: () => void;
  readonly goTo: (at: number) => void;
}

/**
 * Walks through steps: by itself once it is played, or one by one. Each is a picture of its own; nothing glides, so
 * that it is the same for those who want little motion.
 */
export function useSteps(count: number): Steps {
  const [step, setStep] = useState<number>();
  const [isPlaying, setPlaying] = useState(false);
  const at = Math.min(step ?? count, count);
  useEffect(() => {
    if (!isPlaying) return;
    const timer = setTimeout(() => {
      setStep(Math.min(at + 1, count));
      if (at + 1 >= count) setPlaying(false);
    }, STEP_MS);
    return () => clearTimeout(timer);
  }, [isPlaying, at, count]);
  return {
    at,
    count,
    isPlaying,
    play: () => {
      if (at >= count) setStep(0);
      setPlaying(true);
    },
    pause: () => setPlaying(false),
    goTo: (to) => {
      setPlaying(false);
      setStep(Math.min(count, Math.max(0, to)));
    },
  };
}
