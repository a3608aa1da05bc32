import type { Derivation } from '../joint/derivation.ts';
import { sayMechanics } from '../language/mechanics/say.ts';
import type { Picture } from '../plot/picture.ts';
import type { Mark } from '../plot/plot.ts';
import type { Language } from '../quantity/language.ts';
import type { TorqueUnit } from '../quantity/unit.ts';
import { forces, torques } from './scribe.ts';
import { torqueShares } from './torque-shares.ts';

type Kept = Pick<Derivation, 'input' | 'output' | 'filled'>;

/** The torque axis goes on so far past the upper limit. */
const BEYOND = 1.15;

/**
 * What is drawn of a derived target: the preload that its torque may leave, and where the torque goes.
 *
 * @param unit of the joint's torques
 */
export function derivedPictures(derivation: Kept, unit: TorqueUnit, language: Language): readonly Picture[] {
  const scribe = { language, units: { torqueNm: unit } };
  const preload = `${sayMechanics(language, 'plot.preload')}, ${forces(scribe).unit}`;
  return [
    {
      kind: 'plot',
      title: sayMechanics(language, 'plot.torque-to-preload'),
      plot: {
        x: { label: `${sayMechanics(language, 'plot.torque')}, ${unit}`, from: 0 },
        y: { label: preload, from: 0 },
        marks: marksOf(derivation, scribe),
      },
    },
    // Kept only since it is drawn; an older derivation tells no shares.
    ...torqueShares(derivation.output, scribe),
  ];
}

function marksOf({ input, output, filled }: Kept, scribe: Parameters<typeof forces>[0]): readonly Mark[] {
  const { language } = scribe;
  const [force, torque] = [forces(scribe), torques(scribe)];
  const { torqueNm, preloadN, leastPreloadN } = output;
  const { lowerNm, targetNm, upperNm } = filled;
  const endNm = BEYOND * Math.max(upperNm, torqueNm);
  const greatestAt = (atNm: number) => (preloadN * atNm) / torqueNm;
  const leastAt = (atNm: number) => (leastPreloadN * atNm) / torqueNm;
  const yieldN = preloadN / input.utilization;
  return [
    {
      kind: 'window',
      name: sayMechanics(language, 'plot.torque-window'),
      along: 'x',
      from: torque.of(lowerNm),
      to: torque.of(upperNm),
      reads: `${torque.show(lowerNm)} – ${torque.show(upperNm)}`,
    },
    {
      kind: 'band',
      name: sayMechanics(language, 'plot.band-tightening'),
      reads: `${force.show(leastAt(targetNm))} – ${force.show(greatestAt(targetNm))}`,
      points: [
        { x: 0, low: 0, high: 0 },
        { x: torque.of(endNm), low: force.of(leastAt(endNm)), high: force.of(greatestAt(endNm)) },
      ],
    },
    {
      kind: 'line',
      name: sayMechanics(language, 'plot.friction-given'),
      points: [
        { x: 0, y: 0 },
        { x: torque.of(endNm), y: force.of(greatestAt(endNm)) },
      ],
    },
    {
      kind: 'limit',
      name: sayMechanics(language, 'plot.yield'),
      along: 'y',
      at: force.of(yieldN),
      reads: force.show(yieldN),
    },
    {
      kind: 'point',
      name: sayMechanics(language, 'plot.target-torque'),
      at: { x: torque.of(targetNm), y: force.of(greatestAt(targetNm)) },
      reads: `${torque.show(targetNm)}, ${force.show(greatestAt(targetNm))}`,
    },
  ];
}
