import type { TorqueWindow } from '../../procedure/procedure.ts';
import { readUnit } from '../../quantity/read-unit.ts';
import { isTorqueUnit, type TorqueUnit } from '../../quantity/unit.ts';
import type { FastenerSpec } from '../joint.ts';
import { readLubricant } from './read-lubricant.ts';
import { type TorquePlausibility, torquePlausibility } from './torque-plausibility.ts';

/**
 * What a torque of a stage does to the joint's fastener.
 *
 * @param window tells the unit that the figure was typed in
 * @returns undefined where the fastener or the torque itself cannot be
 */
export function stageTorque(
  { thread, propertyClass, lubricant }: FastenerSpec,
  torqueNm: number,
  window: TorqueWindow,
): TorquePlausibility | undefined {
  if (torqueNm <= 0) return undefined;
  const judged = torquePlausibility({
    thread,
    propertyClass,
    torqueNm,
    prevailingTorqueNm: 0,
    typedUnit: typedUnit(window.typed.unit),
    lubrication: readLubricant(lubricant),
  });
  return judged.ok ? judged.value : undefined;
}

function typedUnit(text: string): TorqueUnit {
  const unit = readUnit(text);
  return unit.ok && isTorqueUnit(unit.value) ? unit.value : 'N·m';
}
