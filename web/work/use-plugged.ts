import { type LineDescription, type LineEvent, lineReader, type ToldPull } from '@clampwright/core/line';
import { useCallback, useEffect, useRef, useState } from 'react';
import { listenToPort } from './plugged.ts';
import { typedLines } from './typed-line.ts';
import { choosePort, webSerial } from './web-serial.ts';

/** How the wrench at this screen stands. */
export interface PluggedState {
  readonly way: 'none' | 'serial' | 'keyboard';
  readonly isThere: boolean;
  readonly unreadable: number;
  readonly raw: string;
  /** Why the browser gave no port. */
  readonly refusal: string;
}

const APART: PluggedState = { way: 'none', isThere: false, unreadable: 0, raw: '', refusal: '' };

/** @param onPull told of each pull with the way it came */
export function usePlugged(description: LineDescription, onPull: (pull: ToldPull, way: 'serial' | 'keyboard') => void) {
  const [state, setState] = useState(APART);
  const ending = useRef<AbortController>(undefined);
  const tell = useRef(onPull);
  useEffect(() => {
    tell.current = onPull;
  });

  const end = useCallback(() => {
    ending.current?.abort();
    setState(APART);
  }, []);
  useEffect(() => end, [end]);

  const begin = (way: 'serial' | 'keyboard') => {
    ending.current?.abort();
    ending.current = new AbortController();
    setState({ ...APART, way, isThere: way === 'keyboard' });
    const reader = lineReader(description);
    const hear = (events: readonly LineEvent[]): void => {
      for (const event of events) {
        if (event.kind === 'sample') continue;
        const lines = event.kind === 'unreadable' ? event.lines : 0;
        setState((before) => ({ ...before, raw: event.raw, unreadable: before.unreadable + lines }));
        if (event.kind === 'pull') tell.current(event.pull, way);
      }
    };
    return { reader, hear, signal: ending.current.signal };
  };

  const connect = async (baudRate: number): Promise<void> => {
    const serial = webSerial();
    try {
      const port = serial && (await choosePort(serial));
      if (!port) return;
      const { reader, hear, signal } = begin('serial');
      const isThere = (there: boolean): void => setState((before) => ({ ...before, isThere: there }));
      void listenToPort(port, baudRate, reader, { events: hear, isThere }, signal);
    } catch (error) {
      setState({ ...APART, refusal: error instanceof Error ? error.message : String(error) });
    }
  };

  const hearKeyboard = (): void => {
    const { reader, hear, signal } = begin('keyboard');
    const take = typedLines();
    const onKey = (event: KeyboardEvent): void => {
      // Somebody writes into a field: those keys are theirs.
      if (event.target instanceof HTMLElement && event.target.matches('input, textarea, select')) return;
      const line = take({ key: event.key, atMs: event.timeStamp });
      if (line === undefined) return;
      event.preventDefault();
      event.stopPropagation();
      hear(reader.take(`${line}\n`));
    };
    document.addEventListener('keydown', onKey, { capture: true, signal });
  };

  return { state, connect, hearKeyboard, end };
}
