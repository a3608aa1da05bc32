import { type CalculationName, calculate } from '@clampwright/core/calculations';
import type { Result } from '@clampwright/core/failure';
import { useEffect, useMemo, useRef, useState } from 'react';
import { type DrawAnswer, type DrawRequest, withFewDraws, withoutDraws } from './draws.ts';

type Input = Readonly<Record<string, unknown>>;

/** A worker that answers the newest question; those between are dropped while it is busy. */
class DrawDesk {
  readonly #worker = new Worker(new URL('./draws-worker.ts', import.meta.url), { type: 'module' });
  #isBusy = false;
  #next: DrawRequest | undefined;

  constructor(onAnswer: (answer: DrawAnswer) => void, onBreak: () => void) {
    this.#worker.addEventListener('message', ({ data }: MessageEvent<DrawAnswer>) => {
      this.#isBusy = false;
      onAnswer(data);
      this.#sendNext();
    });
    this.#worker.addEventListener('error', onBreak);
  }

  ask(request: DrawRequest): void {
    this.#next = request;
    this.#sendNext();
  }

  close(): void {
    this.#worker.terminate();
  }

  #sendNext(): void {
    if (this.#isBusy || !this.#next) return;
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker has no origin to name
    this.#worker.postMessage(this.#next);
    this.#isBusy = true;
    this.#next = undefined;
  }
}

/** So long nothing is changed before all draws are made. */
const REST_MS = 350;

export interface LiveResult {
  readonly result: Result<unknown>;
  /** All draws are not yet made. */
  readonly isRough: boolean;
}

/** The result of what is typed. What is drawn is drawn beside the page: few draws at once, all once the hands rest. */
export function useResult(name: CalculationName, input: Input, isDrawn: boolean): LiveResult {
  const plain = useMemo(() => calculate(name, isDrawn ? withoutDraws(input) : input), [name, input, isDrawn]);
  const wantsDraws = isDrawn && plain.ok && input['draws'] !== 0;
  const drawn = useDrawn(name, input, { isDrawn, wantsDraws });
  if (!wantsDraws) return { result: plain, isRough: false };
  return { result: drawn?.result ?? plain, isRough: drawn?.wholeOf !== input };
}

interface Drawn {
  readonly result: Result<unknown>;
  /** The input of which all draws are made; absent after few. */
  readonly wholeOf?: Input;
}

interface Wish {
  /** Whether this calculation draws at all. */
  readonly isDrawn: boolean;
  readonly wantsDraws: boolean;
}

function useDrawn(name: CalculationName, input: Input, { isDrawn, wantsDraws }: Wish): Drawn | undefined {
  const [drawn, setDrawn] = useState<Drawn>();
  const desks = useRef<{ readonly few: DrawDesk; readonly all: DrawDesk }>(undefined);
  const newest = useRef({ id: 0, input });
  useEffect(() => {
    if (!isDrawn) return;
    // A rough answer to an older question is still nearer than none; a whole one only counts for the newest.
    const hearFew = ({ result }: DrawAnswer) =>
      setDrawn((before) => (before?.wholeOf === newest.current.input ? before : { result }));
    const hearAll = ({ id, result }: DrawAnswer) => {
      if (id === newest.current.id) setDrawn({ result, wholeOf: newest.current.input });
    };
    const forget = () => setDrawn(undefined);
    const opened = { few: new DrawDesk(hearFew, forget), all: new DrawDesk(hearAll, forget) };
    desks.current = opened;
    return () => {
      opened.few.close();
      opened.all.close();
      desks.current = undefined;
    };
  }, [isDrawn]);
  useEffect(() => {
    if (!wantsDraws) return;
    const id = newest.current.id + 1;
    newest.current = { id, input };
    desks.current?.few.ask({ id, name, input: withFewDraws(input) });
    const timer = setTimeout(() => desks.current?.all.ask({ id, name, input }), REST_MS);
    return () => clearTimeout(timer);
  }, [name, input, wantsDraws]);
  return drawn;
}
