import type { Part, Picture } from '@clampwright/core/plot';
import { useId } from 'react';
import { VerdictSign } from '../parts/verdict-badge.tsx';
import { Hatch } from './hatch.tsx';
import './plots.css';

type BarListProps = { readonly picture: Extract<Picture, { kind: 'bars' }> };

/** Parts under each other, each with a bar as long as its share; a list to whoever hears it. */
export function BarList({ picture: { title, parts, whole = 1, limit } }: BarListProps) {
  const hatchId = useId();
  const along = (value: number) => Math.max(0, Math.min(1, value / whole)) * 100;
  return (
    <figure className="plot">
      <figcaption>{title}</figcaption>
      <ul className="plot-parts">
        {parts.map((part) => (
          <li key={part.name}>
            <PartWords part={part} />
            <svg className="plot-part-bar" aria-hidden="true">
              <Hatch id={hatchId} kind="outside" />
              <rect className="plot-bar-well" y="4" width="100%" height="16" />
              <rect {...lookOf(part, hatchId)} y="4" width={`${along(part.share)}%`} height="16" />
              {limit ? <rect className="plot-bar-limit" x={`${along(limit.at)}%`} width="3" height="24" /> : null}
            </svg>
            {part.note === undefined ? null : <span className="plot-part-note">{part.note}</span>}
          </li>
        ))}
      </ul>
      {limit ? (
        <p className="plot-part-note">
          <svg viewBox="0 0 3 16" width="3" height="16" aria-hidden="true">
            <rect className="plot-bar-limit" width="3" height="16" />
          </svg>{' '}
          {limit.text}
        </p>
      ) : null}
    </figure>
  );
}

const PartWords = ({ part: { name, text, verdict } }: { readonly part: Part }) => (
  <span className="plot-parts-words">
    <span>{name}</span>
    <strong className={verdict === 'over' ? 'plot-fails' : undefined}>
      {verdict ? <VerdictSign verdict={verdict} /> : null} {text}
    </strong>
  </span>
);

const lookOf = ({ verdict }: Part, hatchId: string) =>
  verdict === undefined || verdict === 'within'
    ? { className: 'plot-bar' }
    : { className: 'plot-outside', fill: `url(#${hatchId})` };
