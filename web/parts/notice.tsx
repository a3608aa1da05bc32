import type { ReactNode } from 'react';

interface NoticeProps {
  /** `caution`: a danger. `alarm`: something failed or is refused. `plain`: good to know. `demo`: invented. */
  readonly kind: 'caution' | 'alarm' | 'plain' | 'demo';
  readonly title?: string | undefined;
  readonly children?: ReactNode;
  /** Told at once to those who hear the page. */
  readonly isLive?: boolean;
}

const SIGNS = {
  caution: 'M16 4 L29 27 H3 Z M16 12 V19 M16 22.6 V23',
  alarm: 'M10 3 H22 L29 10 V22 L22 29 H10 L3 22 V10 Z M11 11 L21 21 M21 11 L11 21',
  plain: 'M4 6 H28 V26 H4 Z M10 13 H22 M10 19 H18',
  demo: 'M4 6 H28 V26 H4 Z M4 26 L28 6',
} as const satisfies Record<NoticeProps['kind'], string>;

/** A notice with its sign, words and ground. */
export const Notice = ({ kind, title, children, isLive = false }: NoticeProps) => (
  <div className={`notice notice-${kind}`} role={isLive ? 'alert' : undefined}>
    <svg className="notice-sign" viewBox="0 0 32 32" aria-hidden="true">
      <path d={SIGNS[kind]} />
    </svg>
    <div className="notice-words">
      {title ? <p className="notice-title">{title}</p> : null}
      {children}
    </div>
  </div>
);
