import { verdictMark } from '@clampwright/core/layout';
import type { Mark } from '@clampwright/core/record';
import { type Html, html } from './escape.ts';

/** The shape of a verdict, in the line of its word. */
export function mark(verdict: Mark['verdict'], isQuiet: boolean): Html {
  const ink = isQuiet || verdict === 'none' ? 'quiet' : verdict;
  const hollow = verdict === 'none' ? ' hollow' : '';
  return html`<svg class="mark ink-${ink}${hollow}" viewBox="-5 -5 10 10" aria-hidden="true"><path d="${verdictMark(verdict, 10)}"/></svg>`;
}
