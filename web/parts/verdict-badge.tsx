import { sayVerdict } from '@clampwright/core/language';
import { verdictMark } from '@clampwright/core/layout';
import type { Verdict } from '@clampwright/core/verdict';
import { useLanguage } from '../app/language.ts';

/** A verdict, or what a lead accepted by exception. */
export type Sign = Verdict | 'accepted';

/** The shape that stands for a verdict, in its colour; its word must stand beside it or be told by the name around it. */
export const VerdictSign = ({ verdict }: { readonly verdict: Sign }) => (
  <svg className={`verdict-sign verdict-${verdict}`} viewBox="-6 -6 12 12" aria-hidden="true">
    <path d={verdictMark(verdict, 10)} />
  </svg>
);

interface VerdictBadgeProps {
  readonly verdict: Verdict;
  readonly size?: 'usual' | 'large';
}

/** A verdict by shape, word and colour. */
export function VerdictBadge({ verdict, size = 'usual' }: VerdictBadgeProps) {
  const language = useLanguage();
  return (
    <span className={`verdict-badge verdict-badge-${size}`}>
      <VerdictSign verdict={verdict} />
      <span className="verdict-word">{sayVerdict(verdict, language)}</span>
    </span>
  );
}
