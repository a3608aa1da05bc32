import { z } from 'zod';
import { invalid, ok, type Result } from '../../failure/failure.ts';
import { frictionTold } from '../../joint/torque/friction-told.ts';
import { tightened } from '../../joint/torque/tightened.ts';
import { torqueForPreload } from '../../joint/torque/torque-for-preload.ts';
import { wrenchSetting } from '../../procedure/setting.ts';

const coefficient = (where: string) =>
  z.number().gt(0).max(1).describe(`coefficient of friction ${where}; with the thread it gives the torques`).optional();

/** What turns forces into torques and settings; all may be left out. */
export const toolFields = {
  thread: z.string().describe('designation, such as M24; with friction it gives the torques').optional(),
  threadFriction: coefficient('in the thread'),
  bearingFriction: coefficient('under head or nut'),
  nutFactor: z.number().gt(0).max(5).describe('K of T = K·d·F, instead of both frictions').optional(),
  leverMm: z
    .number()
    .positive()
    .max(100_000)
    .describe('from the square drive to the marked point of the hand, mm; with it the settings are told')
    .optional(),
  adapterMm: z
    .number()
    .min(0)
    .max(100_000)
    .default(0)
    .describe('from the square drive to the centre of the fastener, mm; 0 without an adapter'),
  adapterAngleDeg: z
    .number()
    .min(-360)
    .max(360)
    .default(0)
    .describe('degrees: 0 straight out, 90 square to the handle, 180 folded back over it'),
};
const toolSchema = z.object(toolFields);
type Tools = z.infer<typeof toolSchema>;

export interface ToolFigures {
  readonly torquesNm?: readonly (readonly number[])[];
  readonly settingsNm?: readonly (readonly number[])[];
}

/** Torque and wrench setting of each pull, where thread, friction and wrench are told. */
export function toolFigures(tools: Tools, targetsN: readonly (readonly number[])[]): Result<ToolFigures> {
  const torque = torquePerNewton(tools);
  if (!torque.ok) return torque;
  const nmPerN = torque.value;
  if (nmPerN === undefined) return ok({});
  const torquesNm = targetsN.map((round) => round.map((force) => force * nmPerN));
  if (tools.leverMm === undefined) return ok({ torquesNm });
  const adapter = { lengthMm: tools.adapterMm, angleDeg: tools.adapterAngleDeg };
  const settingsNm: number[][] = [];
  for (const round of torquesNm) {
    const settings: number[] = [];
    for (const torqueNm of round) {
      const setting = wrenchSetting(torqueNm, tools.leverMm, adapter);
      if (!setting.ok) return setting;
      settings.push(setting.value.settingNm);
    }
    settingsNm.push(settings);
  }
  return ok({ torquesNm, settingsNm });
}

/** Undefined where no thread is told. */
function torquePerNewton({
  thread,
  threadFriction,
  bearingFriction,
  nutFactor,
  leverMm,
}: Tools): Result<number | undefined> {
  if (thread === undefined) {
    const hasTool = [threadFriction, bearingFriction, nutFactor, leverMm].some((one) => one !== undefined);
    if (!hasTool) return ok(undefined);
    return invalid('thread', 'Friction or a wrench is told, but no thread.', 'a designation, such as M24');
  }
  const bolt = tightened({ thread });
  if (!bolt.ok) return bolt;
  const friction = frictionTold({ threadFriction, bearingFriction, nutFactor }, bolt.value.geometry);
  return friction.ok ? ok(torqueForPreload(1, bolt.value.geometry, friction.value).torqueNm) : friction;
}
