import type { Device } from '@clampwright/core/device';
import type { Wrench } from '@clampwright/core/wrench';
import type { LiveReading } from '@clampwright/server/contract';

/** Which figure of a comparison a reading is. */
export type Side = 'indicated' | 'reference';

/** Where the figures of one side come from. */
export type Source =
  | { readonly kind: 'hand' }
  /** A port of this screen. */
  | { readonly kind: 'plugged' }
  /** The wrench on its own port, or by whichever device it tells its pulls. */
  | { readonly kind: 'wrench'; readonly id: string }
  | { readonly kind: 'device'; readonly id: string; readonly name: string };

/** What can be listened to for one side. A folder tells whole files, so it tells nothing live. */
export function sourcesFor(
  side: Side,
  wrench: Pick<Wrench, 'id' | 'connection'>,
  devices: readonly Device[],
): readonly Source[] {
  const live = devices.filter(({ way }) => way.kind !== 'folder');
  const isTold = live.some(({ wrenchId }) => wrenchId === undefined || wrenchId === wrench.id);
  const others = live.filter(
    ({ wrenchId }) => wrenchId === undefined || (wrenchId !== wrench.id && side === 'reference'),
  );
  return [
    { kind: 'hand' },
    ...(side === 'indicated' && (isTold || wrench.connection.kind === 'serial')
      ? [{ kind: 'wrench', id: wrench.id } as const]
      : []),
    ...others.map(({ id, name }) => ({ kind: 'device', id, name }) as const),
    { kind: 'plugged' },
  ];
}

/** A source as a choice names it. */
export const keyOf = (source: Source): string => ('id' in source ? `${source.kind} ${source.id}` : source.kind);

/** Where the server tells it; undefined where nothing has to be asked for. */
export function streamOf(source: Source): string | undefined {
  switch (source.kind) {
    case 'hand':
    case 'plugged':
      return undefined;
    case 'wrench':
      return `/api/v1/toolbox/wrenches/${source.id}/readings`;
    case 'device':
      return `/api/v1/devices/${source.id}/readings`;
  }
}

/** The figures that were told for the comparison at hand, N·m. */
export type LiveFigures = { readonly [side in Side]?: number };

/**
 * The figures with one more reading. A torque counts by its size: what turns left may be told as negative.
 *
 * @returns undefined where it names another wrench than the one that is calibrated
 */
export function withReading(
  figures: LiveFigures,
  side: Side,
  { torqueNm, from }: Pick<LiveReading, 'torqueNm' | 'from'>,
  serial: string,
): LiveFigures | undefined {
  if (side === 'indicated' && from.length > 0 && !from.includes(serial)) return undefined;
  return { ...figures, [side]: Math.abs(torqueNm) };
}

/** Every side that is told live has told something, and so has the reference. */
export const isComplete = (figures: LiveFigures, live: readonly Side[]): boolean =>
  figures.reference !== undefined && live.every((side) => figures[side] !== undefined);
