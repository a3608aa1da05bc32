import type { ReactNode } from 'react';

interface PageHeaderProps {
  readonly title: string;
  /** A line under the title. */
  readonly text?: ReactNode;
  /** Stands above the title, such as the way back. */
  readonly above?: ReactNode;
  /** Buttons at the side. */
  readonly children?: ReactNode;
}

/** The head of a place: its name, large. */
export const PageHeader = ({ title, text, above, children }: PageHeaderProps) => (
  <div className="page-header">
    <title>{title}</title>
    <div>
      {above ? <p className="page-above">{above}</p> : null}
      <h1 className="page-title">{title}</h1>
      {text ? <p className="page-text">{text}</p> : null}
    </div>
    {children ? <div className="page-actions">{children}</div> : null}
  </div>
);
