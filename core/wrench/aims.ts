import type { JointContent } from '../joint/joint.ts';
import type { Stage } from '../procedure/procedure.ts';
import { wrenchSetting } from '../procedure/setting.ts';
import type { Tool } from './wrench.ts';

/** One torque that the wrench is asked for: the window of a round, adapter counted in. */
export interface TorqueAim {
  readonly stage: number;
  readonly round: number;
  /** At the fastener. */
  readonly targetNm: number;
  readonly settingNm: number;
  /** What the wrench shows over what the fastener gets. */
  readonly factor: number;
  /** Upper less lower limit, as the wrench shows it. */
  readonly widthNm: number;
}

/** The torques that a tool is asked for, one for each share of each stage that tightens. */
export function torqueAims({ stages }: JointContent, { wrench, adapter }: Tool): readonly TorqueAim[] {
  const unit = wrenchSetting(1, wrench.leverMm, adapter);
  if (!unit.ok) return [];
  const { factor } = unit.value;
  return tightening(stages).flatMap(({ stage, torque, rounds }) => {
    if (!torque) return [];
    const shares = rounds.map(({ share }) => share);
    return [...new Set(shares)].map((share) => ({
      stage,
      round: shares.indexOf(share) + 1,
      targetNm: torque.targetNm * share,
      factor,
      settingNm: torque.targetNm * share * factor,
      widthNm: (torque.upperNm - torque.lowerNm) * share * factor,
    }));
  });
}

/** Stages that tighten, with their number; a torque wrench is not for loosening. */
export const tightening = (stages: readonly Stage[]): readonly (Omit<Stage, 'kind'> & { readonly stage: number })[] =>
  stages.flatMap((stage, index) => (stage.kind === 'loosen' ? [] : [{ ...stage, stage: index + 1 }]));
