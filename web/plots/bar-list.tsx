import type { SharePart } from './share-bar.tsx';
import './plots.css';

interface BarListProps {
  readonly title: string;
  readonly parts: readonly SharePart[];
}

/** Parts under each other, each with a bar as long as its share; a list to whoever hears it. */
export const BarList = ({ title, parts }: BarListProps) => (
  <figure className="plot">
    <figcaption>{title}</figcaption>
    <ul className="plot-bars">
      {parts.map(({ name, share, text }) => (
        <li key={name}>
          <span className="plot-bars-words">
            <span>{name}</span>
            <strong>{text}</strong>
          </span>
          <svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
            <rect className="plot-bar-well" width="100" height="10" />
            <rect className="plot-bar" width={Math.max(0, Math.min(1, share)) * 100} height="10" />
          </svg>
        </li>
      ))}
    </ul>
  </figure>
);
