import { convert, quantityOf, UNITS, type Unit } from '@clampwright/core/quantity';
import { isRecord } from './is-record.ts';
import { changeableUnit } from './unit-in-name.ts';

/** Units that were chosen in place of a field's own, by the field's name. */
export type Units = Readonly<Record<string, Unit>>;

/** The unit that a field is shown and typed in; undefined where its name tells none that can be changed. */
export const unitOf = (name: string, units: Units): Unit | undefined => units[name] ?? changeableUnit(name);

/** From the unit on screen into the field's own. */
export const toOwn = (value: number, name: string, units: Units): number => between(value, units[name], name, 'in');

/** From the field's own unit into the one on screen. */
export const toShown = (value: number, name: string, units: Units): number => between(value, units[name], name, 'out');

function between(value: number, chosen: Unit | undefined, name: string, way: 'in' | 'out'): number {
  const own = changeableUnit(name);
  if (chosen === undefined || own === undefined) return value;
  const converted = way === 'in' ? convert(value, chosen, own) : convert(value, own, chosen);
  return converted.ok ? converted.value : value;
}

/** A chosen unit; the field's own is not kept, so that a link stays short. */
export function withUnit(units: Units, name: string, unit: Unit): Units {
  const { [name]: _, ...rest } = units;
  return unit === changeableUnit(name) ? rest : { ...rest, [name]: unit };
}

/** Units as a link brought them; what is no unit, or not one of that field's quantity, is left out. */
export function unitsFrom(brought: unknown): Units {
  if (!isRecord(brought)) return {};
  return Object.fromEntries(
    Object.entries(brought).flatMap(([name, text]) => {
      const unit = UNITS.find((row) => row.name === text)?.name;
      const own = changeableUnit(name);
      return unit && own && quantityOf(unit) === quantityOf(own) ? [[name, unit] as const] : [];
    }),
  );
}
