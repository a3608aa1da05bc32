interface TagProps {
  readonly number: number;
  readonly x: number;
  readonly y: number;
  /** Round for a point, square for a limit. */
  readonly isRound: boolean;
}

const TAG_PX = 10;

/** The number of a mark, as a drawing numbers its parts. */
export const Tag = ({ number, x, y, isRound }: TagProps) => (
  <g>
    <rect
      className="plot-tag"
      x={x - TAG_PX}
      y={y - TAG_PX}
      width={2 * TAG_PX}
      height={2 * TAG_PX}
      rx={isRound ? TAG_PX : 1}
    />
    <text className="plot-tag-text" x={x} y={y} dy="0.35em" textAnchor="middle">
      {number}
    </text>
  </g>
);
