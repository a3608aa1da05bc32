import type { Picture } from '@clampwright/core/plot';
import './plots.css';

type BarListProps = { readonly picture: Extract<Picture, { kind: 'bars' }> };

/** Parts under each other, each with a bar as long as its share; a list to whoever hears it. */
export const BarList = ({ picture: { title, parts } }: BarListProps) => (
  <figure className="plot">
    <figcaption>{title}</figcaption>
    <ul className="plot-parts">
      {parts.map(({ name, share, text }) => (
        <li key={name}>
          <span className="plot-parts-words">
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
