import type { TorqueWindow } from '../../procedure/procedure.ts';
import { readUnit } from '../../quantity/read-unit.ts';
import { isTorqueUnit, type TorqueUnit } from '../../quantity/unit.ts';
import { type FastenerSpec, threadTold } from '../joint.ts';
import { readLubricant } from './read-lubricant.ts';
import { type TorquePlausibility, torquePlausibility } from './torque-plausibility.ts';

/**
 * What a torque of a stage does to the joint's fastener.
 *
 * @param window tells the unit that the figure was typed in
 * @returns undefined where the fastener or the torque itself cannot be
 */
export function stageTorque(
  fastener: FastenerSpec,
  torqueNm: number,
  window: TorqueWindow,
): TorquePlausibility | undefined {
  if (torqueNm <= 0) return undefined;
  const { ownMaterial, propertyClass, lubricant } = fastener;
  const judged = torquePlausibility({
    thread: threadTold(fastener),
    ...(ownMaterial
      ? {
          proofStressMPa: ownMaterial.yieldStrengthMPa,
          tensileStrengthMPa: ownMaterial.tensileStrengthMPa,
          materialName: ownMaterial.name,
        }
      : { propertyClass }),
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
