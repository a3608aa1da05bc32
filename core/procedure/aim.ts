import { ok, type Result } from '../failure/failure.ts';
import { type Lever, wrenchSetting } from './setting.ts';
import type { Step } from './step.ts';
import { windUpDeg } from './wind-up.ts';

/** What turns the fastener, as far as the figure to aim at depends on it. */
export interface AimingTool {
  readonly wrench: { readonly leverMm: number };
  readonly adapter?: Lever | undefined;
  readonly extension?: { readonly stiffnessNmPerDeg?: number | undefined } | undefined;
}

/** What the wrench must show, adapter and wind-up counted in. */
export interface StepAim {
  readonly torque: { readonly lowerNm: number; readonly settingNm: number; readonly upperNm: number } | undefined;
  /** Still to turn, as the wrench shows it. `windUpDeg` of it goes into the extension. */
  readonly angle:
    | { readonly lowerDeg: number; readonly turnDeg: number; readonly upperDeg: number; readonly windUpDeg: number }
    | undefined;
  /** Torque shown from which angle is counted. */
  readonly angleFromNm: number | undefined;
  /** Setting over torque at the fastener: 1 without an adapter. */
  readonly factor: number;
}

/**
 * The figure to aim at for one pull of a step.
 *
 * @param carriedDeg already turned by attempts that stayed under and are carried on
 * @returns refused where the adapter cannot be; wind-up is left at 0 where the extension's stiffness or the final
 * torque is not known
 */
export function aimOf(step: Step, tool: AimingTool, carriedDeg = 0): Result<StepAim> {
  const unit = wrenchSetting(1, tool.wrench.leverMm, tool.adapter);
  if (!unit.ok) return unit;
  const { factor } = unit.value;
  const { torque, angle, angleFromNm } = step;
  const stiffness = tool.extension?.stiffnessNmPerDeg;
  const windUp =
    stiffness === undefined || !torque || !angle ? 0 : windUpDeg(torque.targetNm, angleFromNm ?? 0, stiffness);
  const shown = (deg: number): number => Math.max(0, deg - carriedDeg + windUp);
  return ok({
    torque: torque && {
      lowerNm: torque.lowerNm * factor,
      settingNm: torque.targetNm * factor,
      upperNm: torque.upperNm * factor,
    },
    angle: angle && {
      lowerDeg: shown(angle.lowerDeg),
      turnDeg: shown(angle.targetDeg),
      upperDeg: shown(angle.upperDeg),
      windUpDeg: windUp,
    },
    angleFromNm: angleFromNm === undefined ? undefined : angleFromNm * factor,
    factor,
  });
}
