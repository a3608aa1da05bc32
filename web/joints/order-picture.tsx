import type { JointDrawing } from '@clampwright/core/layout';
import type { ReactNode } from 'react';
import { useTranslation } from 'react-i18next';

type Spot = JointDrawing['spots'][number];

interface OrderPictureProps {
  readonly drawing: JointDrawing;
  /** As far as it is shown. */
  readonly order: readonly number[];
  readonly isPlaying: boolean;
  readonly label: string;
  readonly onTap: ((position: number) => void) | undefined;
}

/** Outline, the way from position to position, and each position with its turn beside it. */
export function OrderPicture({ drawing, order, isPlaying, label, onTap }: OrderPictureProps) {
  const { t } = useTranslation('lead');
  const { x, y, width, height } = drawing.viewBox;
  const now = isPlaying ? order.at(-1) : undefined;
  const nameOf = (position: number, turn: number) =>
    turn > 0 ? t('round.spot-nth', { position, nth: turn }) : t('round.spot', { position });
  return (
    <svg
      className="order-drawing"
      viewBox={`${x} ${y} ${width} ${height}`}
      role={onTap ? 'group' : 'img'}
      aria-label={label}
    >
      {drawing.outline.map((path) => (
        <path key={path} d={path} className="order-outline" />
      ))}
      <path className="order-way" d={wayThrough(drawing.spots, order)} />
      {drawing.spots.map((spot) => {
        const { position } = spot;
        const turn = order.indexOf(position) + 1;
        const picture = (
          <SpotPicture spot={spot} turn={turn} isNow={position === now} turnSizeMm={drawing.labelSizeMm} />
        );
        return onTap ? (
          <TapSpot key={position} name={nameOf(position, turn)} isIn={turn > 0} onTap={() => onTap(position)}>
            {picture}
          </TapSpot>
        ) : (
          <g key={position}>{picture}</g>
        );
      })}
    </svg>
  );
}

function wayThrough(spots: readonly Spot[], order: readonly number[]): string {
  const points = order.flatMap((position) => spots[position - 1] ?? []);
  return points.map(({ xMm, yMm }, index) => `${index === 0 ? 'M' : 'L'}${xMm} ${yMm}`).join(' ');
}

interface SpotPictureProps {
  readonly spot: Spot;
  /** Its number in the order; 0: not in it. */
  readonly turn: number;
  readonly isNow: boolean;
  readonly turnSizeMm: number;
}

function SpotPicture({ spot, turn, isNow, turnSizeMm }: SpotPictureProps) {
  const { position, xMm, yMm, radiusMm, labelXMm, labelYMm } = spot;
  const state = [turn > 0 ? 'order-spot-in' : '', isNow ? 'order-spot-now' : ''];
  return (
    <g className={state.filter(Boolean).join(' ')}>
      <circle cx={xMm} cy={yMm} r={radiusMm} className="order-reach" />
      <circle cx={xMm} cy={yMm} r={radiusMm} className="order-head" />
      <text x={xMm} y={yMm} className="order-number" fontSize={radiusMm} dy="0.36em" textAnchor="middle">
        {position}
      </text>
      {turn > 0 ? (
        <text x={labelXMm} y={labelYMm} className="order-turn" fontSize={turnSizeMm} dy="0.36em" textAnchor="middle">
          {`${turn}.`}
        </text>
      ) : null}
    </g>
  );
}

interface TapSpotProps {
  readonly name: string;
  readonly isIn: boolean;
  readonly onTap: () => void;
  readonly children: ReactNode;
}

const TapSpot = ({ name, isIn, onTap, children }: TapSpotProps) => (
  <g
    // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- a drawing has no button element
    role="button"
    className="order-tap"
    tabIndex={0}
    aria-label={name}
    aria-pressed={isIn}
    onClick={onTap}
    onKeyDown={(event) => {
      if (event.key !== 'Enter' && event.key !== ' ') return;
      event.preventDefault();
      onTap();
    }}
  >
    {children}
  </g>
);
