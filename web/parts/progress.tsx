import { useTranslation } from 'react-i18next';

interface ProgressProps {
  readonly done: number;
  readonly total: number;
  /** What is counted, for those who hear it. */
  readonly label: string;
}

/** How far a work has come: a figure and a bar. */
export function Progress({ done, total, label }: ProgressProps) {
  const { t } = useTranslation();
  return (
    <div className="progress">
      <span className="progress-figure">
        <span className="progress-done">{done}</span>
        <span className="progress-total">{t('progress.of', { total })}</span>
      </span>
      <progress className="progress-bar" value={done} max={Math.max(total, 1)} aria-label={label} />
    </div>
  );
}
