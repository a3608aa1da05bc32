import type { OwnRow } from '../fastener/own-row.ts';
import type { BoltDimensions } from '../fastener/own-thread.ts';
import type { FastenerSpec } from '../joint/joint.ts';
import type { Language } from '../quantity/language.ts';
import { showNumber } from '../quantity/show-number.ts';
import { sayDate } from './dates.ts';
import { say } from './say.ts';

/** Thread with class or own material: `M12 10.9`. */
export const nameFastener = ({ thread, propertyClass, ownMaterial }: FastenerSpec): string =>
  [thread, propertyClass ?? ownMaterial?.name].filter(Boolean).join(' ');

// Letters of ISO 724 and ISO 898-1, of VDI 2230-1 for bearing face, hole and shank: they need no translation.
const SYMBOLS = [
  ['majorDiameterMm', 'd', 'mm'],
  ['pitchMm', 'P', 'mm'],
  ['pitchDiameterMm', 'd₂', 'mm'],
  ['minorDiameterMm', 'd₁', 'mm'],
  ['rootDiameterMm', 'd₃', 'mm'],
  ['stressAreaMm2', 'A_s', 'mm²'],
  ['bearingOuterMm', 'd_w', 'mm'],
  ['holeMm', 'd_h', 'mm'],
  ['shankDiameterMm', 'd_i', 'mm'],
] as const;

/** The dimensions that were given of an own bolt: `d 22 mm, P 2 mm, d₃ 19.5 mm`. */
export const sayBolt = (bolt: BoltDimensions, language: Language): string =>
  SYMBOLS.flatMap(([field, symbol, unit]) => {
    const value = bolt[field];
    return value === undefined ? [] : [`${symbol}\u00a0${showNumber(value, language)}\u00a0${unit}`];
  }).join(', ');

/** An own row as a record tells it: name, figures of a bolt, source, who entered it and when. */
export function sayOwnRow(row: OwnRow, language: Language): string {
  const name = row.kind === 'bolt' ? `${row.name} (${sayBolt(row, language)})` : row.name;
  const on = sayDate(row.addedAt.slice(0, 10), language);
  return say(language, 'derived.own-row', { name, source: row.source, by: row.by.name, on });
}
