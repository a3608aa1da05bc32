import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

/** Width of an element as it stands on the page, so that letters of a drawing keep their size. */
export function useWidth<Kind extends HTMLElement>(first: number): readonly [RefObject<Kind | null>, number] {
  const ref = useRef<Kind>(null);
  const [widthPx, setWidthPx] = useState(first);
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return;
    const watcher = new ResizeObserver(() => setWidthPx(Math.floor(element.clientWidth)));
    watcher.observe(element);
    setWidthPx(Math.floor(element.clientWidth));
    return () => watcher.disconnect();
  }, []);
  return [ref, widthPx];
}
