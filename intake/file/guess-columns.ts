import { isTorqueUnit, readUnit, type TorqueUnit } from '@clampwright/core/quantity';
import type { HeadTable } from './head-table.ts';
import type { Column } from './mapping.ts';
import { type Role, roleOf } from './words.ts';

export type AngleUnit = 'deg' | 'rad' | 'turn';

/** A column by what it seems to be. */
export interface KnownColumn {
  /** As a mapping names it. */
  readonly column: Column;
  readonly role: Role | 'torqueUnit' | 'angleUnit' | undefined;
  readonly name: string;
  readonly cells: readonly string[];
}

/** Gives each column its role by the words over it; columns of units are told by their cells. */
export function guessColumns({ header, rows }: HeadTable): readonly KnownColumn[] {
  const count = header?.length ?? rows[0]?.cells.length ?? 0;
  const names = Array.from({ length: count }, (_, at) => header?.[at] ?? '');
  return names.map((name, at) => {
    const cells = rows.map((row) => (row.cells[at] ?? '').trim());
    const isAlone = names.filter((other) => other.toLowerCase() === name.toLowerCase()).length === 1;
    return { column: name !== '' && isAlone ? name : at + 1, role: unitRole(cells) ?? roleOf(name), name, cells };
  });
}

function unitRole(cells: readonly string[]): 'torqueUnit' | 'angleUnit' | undefined {
  if (cells.length === 0) return undefined;
  if (cells.every((cell) => torqueUnitOf(cell) !== undefined)) return 'torqueUnit';
  return cells.every((cell) => angleUnitOf(cell) !== undefined) ? 'angleUnit' : undefined;
}

export function torqueUnitOf(text: string): TorqueUnit | undefined {
  const unit = readUnit(text);
  return unit.ok && isTorqueUnit(unit.value) ? unit.value : undefined;
}

export function angleUnitOf(text: string): AngleUnit | undefined {
  const unit = readUnit(text);
  if (!unit.ok) return undefined;
  return unit.value === 'deg' || unit.value === 'rad' || unit.value === 'turn' ? unit.value : undefined;
}

/** `Torque [N·m]`, `Moment (Nm)`, `torque_Nm`, `angle deg`: what stands in brackets, or the last word. */
export function unitInName<U>(name: string, unitOf: (text: string) => U | undefined): U | undefined {
  const bracketed = /[([](.+?)[)\]]/.exec(name)?.[1];
  const last = /[\s_](\S+)$/.exec(name)?.[1];
  return (bracketed === undefined ? undefined : unitOf(bracketed)) ?? (last === undefined ? undefined : unitOf(last));
}
