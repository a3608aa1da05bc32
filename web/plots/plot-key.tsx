import type { Mark } from '@clampwright/core/plot';
import { Tag } from './tag.tsx';

interface PlotKeyProps {
  readonly marks: readonly Mark[];
  readonly numbers: ReadonlyMap<Mark, number>;
  /** Figure of a mark, by its name. */
  readonly figures: ReadonlyMap<string, string>;
  readonly hatchId: string;
}

/** What each mark is and what it reads: the plot in words. */
export function PlotKey({ marks, numbers, figures, hatchId }: PlotKeyProps) {
  const named = marks.filter((mark, index) => marks.findIndex(({ name }) => name === mark.name) === index);
  return (
    <ul className="plot-key">
      {named.map((mark) => (
        <li key={mark.name}>
          <svg viewBox="0 0 26 22" width="26" height="22" aria-hidden="true">
            <Swatch mark={mark} number={numbers.get(mark)} hatchId={hatchId} />
          </svg>
          <span>
            {mark.name}
            {figures.has(mark.name) ? <strong> {figures.get(mark.name)}</strong> : null}
          </span>
        </li>
      ))}
    </ul>
  );
}

interface SwatchProps {
  readonly mark: Mark;
  readonly number: number | undefined;
  readonly hatchId: string;
}

function Swatch({ mark, number, hatchId }: SwatchProps) {
  switch (mark.kind) {
    case 'line':
      return <path className={mark.isDashed ? 'plot-line plot-line-dashed' : 'plot-line'} d="M1 11H25" />;
    case 'band':
      return (
        <rect
          className={mark.isHatched ? 'plot-outside' : 'plot-band'}
          fill={mark.isHatched ? `url(#${hatchId})` : undefined}
          x="1"
          y="4"
          width="24"
          height="14"
        />
      );
    case 'window':
      return <rect className="plot-window" x="1" y="4" width="24" height="14" />;
    case 'limit':
    case 'point':
      return <Tag number={number ?? 0} x={13} y={11} isRound={mark.kind === 'point'} />;
  }
}
