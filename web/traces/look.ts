import { useSyncExternalStore } from 'react';

/** The colours of the page, as a canvas wants them. */
export interface Look {
  readonly ink: string;
  readonly soft: string;
  readonly line: string;
  readonly accent: string;
  readonly sheet: string;
  readonly within: string;
  readonly doubtful: string;
  readonly font: string;
}

/** Reads the colours where they are kept: on the page, in the theme that is shown. */
export function lookOf(element: Element): Look {
  const style = getComputedStyle(element);
  const of = (name: string): string => style.getPropertyValue(name).trim();
  return {
    ink: of('--ink'),
    soft: of('--ink-soft'),
    line: of('--line'),
    accent: of('--accent'),
    sheet: of('--sheet'),
    within: of('--within'),
    doubtful: of('--doubtful'),
    font: of('--font'),
  };
}

const darkScheme = (): MediaQueryList => matchMedia('(prefers-color-scheme: dark)');

/** Whether the device asks for dark pages; tells when it changes its mind, as at dusk. */
export const useDarkScheme = (): boolean =>
  useSyncExternalStore(
    (onChange) => {
      const scheme = darkScheme();
      scheme.addEventListener('change', onChange);
      return () => scheme.removeEventListener('change', onChange);
    },
    () => darkScheme().matches,
  );
