import { type KeyLine, keyOf, type Mark } from '@clampwright/core/plot';
import { Tag } from './tag.tsx';

interface PlotKeyProps {
  readonly marks: readonly Mark[];
  readonly hatchId: string;
}

/** What each mark is and what it reads: the plot in words. */
export function PlotKey({ marks, hatchId }: PlotKeyProps) {
  return (
    <ul className="plot-key">
      {keyOf(marks).map(({ mark, number }) => (
        <li key={mark.name}>
          <svg viewBox="0 0 26 22" width="26" height="22" aria-hidden="true">
            <Swatch mark={mark} number={number} hatchId={hatchId} />
          </svg>
          <span>
            {mark.name}
            {mark.reads === undefined ? null : <strong> {mark.reads}</strong>}
          </span>
        </li>
      ))}
    </ul>
  );
}

interface SwatchProps extends KeyLine {
  readonly hatchId: string;
}

const RING = 'M8 11A5 5 0 0 1 18 11A5 5 0 0 1 8 11Z';
const SIGNS = { dot: RING, ring: RING, cross: 'M8 6L18 16M8 16L18 6' } as const;

function Swatch({ mark, number, hatchId }: SwatchProps) {
  switch (mark.kind) {
    case 'line':
      return <path className={mark.isDashed ? 'plot-line plot-line-dashed' : 'plot-line'} d="M1 11H25" />;
    case 'points':
      return <path className={`plot-sign plot-sign-${mark.sign}`} d={SIGNS[mark.sign]} />;
    case 'band':
    case 'bars':
      return (
        <rect
          className={mark.isHatched ? 'plot-outside' : `plot-${mark.kind}`}
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
