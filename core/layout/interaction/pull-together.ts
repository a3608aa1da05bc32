import type { TightSet } from './tight-set.ts';

/** What one of several wrenches does at the same time: pull a bolt to a force, but no farther than to a travel. */
export interface WrenchAim {
  readonly bolt: number;
  readonly forceN: number;
  readonly travelMm?: number;
}

/** Where a nut ends: where it was, at its force, or at its travel. */
type Standing = 'stays' | 'holds' | 'arrives';

/** Nuts of one group, from where they start. */
interface Group {
  readonly joint: TightSet;
  readonly aims: readonly WrenchAim[];
  readonly startsMm: readonly (number | undefined)[];
}

/** Three ways for each of four nuts, and as many again: no group needs so many changes. */
const MOST_CHANGES = 200;

/** What differs by less than so much is rounding. */
const ROUNDING = 1e-11;

/**
 * Advances several nuts together until each bolt carries its force or its nut has come to its travel. A bolt that
 * carries as much already stays, as long as the others leave it as much. There is one such end for every joint; it is
 * found by changing the first nut that does not fit, again and again, which ends for a group as it does for one bolt.
 *
 * @returns how many of the wrenches turned nothing
 */
export function pullTogether(joint: TightSet, aims: readonly WrenchAim[]): number {
  const startsMm = aims.map(({ bolt }) => joint.travelOf(bolt));
  const group = { joint, aims, startsMm };
  const standings = aims.map((aim, index): Standing => {
    if (isPast(aim.travelMm, startsMm[index])) return 'stays';
    return joint.forceN[aim.bolt]! < aim.forceN ? 'holds' : 'stays';
  });
  for (let change = 0; change < MOST_CHANGES; change++) {
    settle(group, standings);
    const index = standings.findIndex((standing, at) => nextStanding(group, at, standing) !== standing);
    if (index < 0) break;
    standings[index] = nextStanding(group, index, standings[index]!);
  }
  return standings.filter((standing) => standing === 'stays').length;
}

const isPast = (endMm: number | undefined, startMm: number | undefined): boolean =>
  endMm !== undefined && startMm !== undefined && startMm >= endMm;

function settle({ joint, aims, startsMm }: Group, standings: readonly Standing[]): void {
  for (const [index, { bolt, travelMm }] of aims.entries()) {
    const [standing, startMm] = [standings[index]!, startsMm[index]];
    if (standing === 'arrives' && travelMm !== undefined) joint.place(bolt, travelMm);
    else if (standing === 'stays' && startMm !== undefined && joint.travelOf(bolt) !== startMm) {
      joint.place(bolt, startMm);
    }
  }
  const held = aims.filter((_, index) => standings[index] === 'holds');
  if (held.length > 0)
    joint.hold(
      held.map(({ bolt }) => bolt),
      held.map(({ forceN }) => forceN),
    );
}

/** Where a nut goes from a standing that does not fit it; the same where it does. */
function nextStanding({ joint, aims, startsMm }: Group, index: number, standing: Standing): Standing {
  const { bolt, forceN, travelMm: endMm } = aims[index]!;
  const startMm = startsMm[index];
  const force = joint.forceN[bolt]!;
  const travelMm = joint.travelMm[bolt]!;
  switch (standing) {
    case 'stays':
      return force < forceN * (1 - ROUNDING) && !isPast(endMm, startMm) ? 'holds' : 'stays';
    case 'holds':
      if (startMm !== undefined && travelMm < startMm * (1 - ROUNDING)) return 'stays';
      return endMm !== undefined && travelMm > endMm * (1 + ROUNDING) ? 'arrives' : 'holds';
    case 'arrives':
      return force > forceN * (1 + ROUNDING) ? 'holds' : 'arrives';
  }
}
