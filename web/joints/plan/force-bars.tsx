interface ForceBarsProps {
  readonly label: string;
  /** By position, N. */
  readonly forcesN: readonly number[];
  readonly finalN: number;
  /** Positions pulled just now. */
  readonly pulled: readonly number[];
  readonly show: (forceN: number) => string;
}

const HIGH = 120;
const WIDE = 24;
/** The force wanted stands at this share of the height; what neighbours lift goes above. */
const WANTED_AT = 0.7;

/** A bar for each position, its number below, its figure above; the line is the force wanted. */
export function ForceBars({ label, forcesN, finalN, pulled, show }: ForceBarsProps) {
  const heightOf = (forceN: number) => Math.min(HIGH, (forceN / finalN) * HIGH * WANTED_AT);
  const width = forcesN.length * WIDE;
  return (
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- what scrolls must be reachable with the keyboard
    <section className="force-bars" aria-label={label} tabIndex={0}>
      <svg
        viewBox={`0 -16 ${width} ${HIGH + 34}`}
        style={{ minWidth: `${forcesN.length * 1.9}rem` }}
        aria-hidden="true"
      >
        {forcesN.map((forceN, index) => (
          <g key={index} transform={`translate(${index * WIDE} 0)`}>
            <rect x={4} y={0} width={WIDE - 8} height={HIGH} className="force-bar-well" />
            <rect
              x={4}
              y={HIGH - heightOf(forceN)}
              width={WIDE - 8}
              height={heightOf(forceN)}
              className={pulled.includes(index + 1) ? 'force-bar force-bar-now' : 'force-bar'}
            />
            <text x={WIDE / 2} y={-5} fontSize={9.5} textAnchor="middle" className="force-bar-figure">
              {show(forceN)}
            </text>
            <text x={WIDE / 2} y={HIGH + 13} fontSize={11} textAnchor="middle" className="force-bar-number">
              {index + 1}
            </text>
          </g>
        ))}
        <path d={`M0 ${HIGH * (1 - WANTED_AT)} H${width}`} className="force-bar-wanted" />
      </svg>
    </section>
  );
}
