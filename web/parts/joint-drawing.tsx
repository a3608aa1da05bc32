import { type JointDrawing as Drawing, jointDrawing, type Layout, verdictMark } from '@clampwright/core/layout';
import { type KeyboardEvent, useRef } from 'react';
import { forceArc } from './force-arc.ts';
import type { Sign } from './verdict-badge.tsx';

/** How one position is drawn. */
export interface SpotLook {
  readonly mark?: Sign | undefined;
  /** The next one in the order of the work. */
  readonly isNext?: boolean;
  /** The one in hand, picked from the order. */
  readonly isPicked?: boolean;
  /** Clamp force: share of the force wanted as a bar round the head, and its figure beside it. */
  readonly force?: { readonly share: number; readonly text: string } | undefined;
  /** Told to those who hear the page. */
  readonly name: string;
}

interface JointDrawingProps {
  readonly layout: Layout;
  /** What the drawing shows, in words. */
  readonly label: string;
  readonly look: (position: number) => SpotLook;
  /** Positions in the order to come, drawn as a line. */
  readonly coming?: readonly number[];
  /** Absent: a picture, not a choice. */
  readonly onPick?: ((position: number) => void) | undefined;
}

/** A joint as it is seen from the tool side, with what stands at each position. */
export function JointDrawing({ layout, label, look, coming = [], onPick }: JointDrawingProps) {
  const drawing = jointDrawing(layout);
  const { x, y, width, height } = drawing.viewBox;
  const frame = useRef<SVGSVGElement>(null);
  const move = (event: KeyboardEvent, position: number) => {
    const step = STEPS[event.key];
    if (step === undefined) return;
    event.preventDefault();
    const to = ((position - 1 + step + drawing.spots.length) % drawing.spots.length) + 1;
    frame.current?.querySelector<SVGGElement>(`[data-position="${to}"]`)?.focus();
  };
  const inHand = coming[0] ?? 1;
  return (
    <svg
      ref={frame}
      className="joint-drawing"
      viewBox={`${x} ${y} ${width} ${height}`}
      role={onPick ? 'group' : 'img'}
      aria-label={label}
    >
      {drawing.outline.map((d) => (
        <path key={d} d={d} className="joint-outline" />
      ))}
      <ComingLine drawing={drawing} coming={coming} />
      {drawing.spots.map((spot) => {
        const spotLook = look(spot.position);
        const body = <Spot spot={spot} look={spotLook} figureMm={drawing.labelSizeMm} />;
        return onPick ? (
          <g
            key={spot.position}
            // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- a drawing has no button element
            role="button"
            className="joint-spot-button"
            data-position={spot.position}
            tabIndex={spot.position === inHand ? 0 : -1}
            aria-label={spotLook.name}
            onClick={() => onPick(spot.position)}
            onKeyDown={(event) => {
              if (event.key === 'Enter' || event.key === ' ') {
                event.preventDefault();
                onPick(spot.position);
              } else move(event, spot.position);
            }}
          >
            {body}
          </g>
        ) : (
          <g key={spot.position}>{body}</g>
        );
      })}
    </svg>
  );
}

const STEPS: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 };

type DrawnSpot = Drawing['spots'][number];

interface SpotProps {
  readonly spot: DrawnSpot;
  readonly look: SpotLook;
  readonly figureMm: number;
}

function Spot({ spot, look, figureMm }: SpotProps) {
  const { xMm, yMm, radiusMm, labelXMm, labelYMm } = spot;
  const aside = { xMm: labelXMm - xMm, yMm: labelYMm - yMm };
  const figureOff = look.isNext || look.isPicked ? FIGURE_OFF_RING : FIGURE_OFF;
  const [markX, markY] = look.force ? [awayFrom(aside.xMm), awayFrom(aside.yMm)] : [MARK_AT, MARK_AT];
  const state = [
    'joint-spot',
    look.isNext ? 'joint-spot-next' : '',
    look.isPicked ? 'joint-spot-picked' : '',
    look.mark ? `verdict-${look.mark}` : '',
  ];
  return (
    <g className={state.filter(Boolean).join(' ')} transform={`translate(${xMm} ${yMm})`}>
      {look.isNext || look.isPicked ? <circle r={radiusMm * RING} className="joint-spot-ring" /> : null}
      <circle r={radiusMm} className="joint-spot-head" />
      {look.force ? (
        <>
          <path
            className="joint-spot-force"
            strokeWidth={radiusMm * BAR}
            d={forceArc(radiusMm * BAR_AT, look.force.share)}
          />
          <text
            className="joint-spot-figure"
            x={figureOff * aside.xMm}
            y={figureOff * aside.yMm}
            fontSize={figureMm}
            dy="0.36em"
            textAnchor="middle"
          >
            {look.force.text}
          </text>
        </>
      ) : null}
      <text className="joint-spot-number" fontSize={radiusMm} dy="0.36em" textAnchor="middle">
        {spot.position}
      </text>
      {look.mark ? (
        <path
          className="joint-spot-mark"
          transform={`translate(${radiusMm * markX} ${radiusMm * markY})`}
          d={verdictMark(look.mark, radiusMm)}
        />
      ) : null}
    </g>
  );
}

const RING = 1.32;
const BAR = 0.22;
const BAR_AT = 1 - BAR / 2;
const MARK_AT = 0.75;
/** Figures keep clear of the head, and of the ring round the next one. */
const FIGURE_OFF = 1.12;
const FIGURE_OFF_RING = 1.36;
/** Where a figure stands beside the head the mark goes to the other side of it. */
const awayFrom = (offMm: number): number => (offMm > 0 ? -MARK_AT : MARK_AT);
/** Steps of the order that are drawn: more would cover the joint. */
const STEPS_SHOWN = 4;

function ComingLine({ drawing, coming }: { readonly drawing: Drawing; readonly coming: readonly number[] }) {
  const spots = coming.slice(0, STEPS_SHOWN + 1).flatMap((position) => drawing.spots[position - 1] ?? []);
  return spots.slice(1).map((to, index) => {
    const from = spots[index];
    if (!from) return null;
    return (
      <path
        key={to.position}
        className="joint-coming"
        opacity={1 - index / (STEPS_SHOWN + 1)}
        d={`M${from.xMm} ${from.yMm} L${to.xMm} ${to.yMm}`}
      />
    );
  });
}
