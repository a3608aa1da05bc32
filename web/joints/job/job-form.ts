import type { Asset } from '@clampwright/core/record';
import type { JointListItem, NewJob } from '@clampwright/server/contract';
import type { Fault } from '../../forms/fault.ts';
import { type Keyed, nextKey } from '../../forms/rows.ts';

export interface JobJointForm extends Keyed {
  readonly jointId: string;
  readonly label: string;
}

export interface JobForm {
  readonly title: string;
  /** Id of a known asset; empty: a new one is written. */
  readonly assetId: string;
  readonly assetName: string;
  readonly assetLocation: string;
  readonly joints: readonly JobJointForm[];
}

export interface JobReading {
  readonly job: NewJob | undefined;
  readonly faults: readonly Fault[];
}

const MOST_JOINTS = 40;

/** Joints that may be worked by: those with a released revision. */
export const released = (joints: readonly JointListItem[]): readonly JointListItem[] =>
  joints.filter((joint) => joint.releasedRevision !== null);

/**
 * What making a job begins with. A joint that was asked for and is not there is not exchanged for another one:
 * the list then begins empty.
 */
export function blankJob(
  joints: readonly JointListItem[],
  assets: readonly Asset[],
  jointId: string | undefined,
): JobForm {
  const first = jointId === undefined ? joints[0] : joints.find((joint) => joint.id === jointId);
  return {
    title: '',
    assetId: assets[0]?.id ?? '',
    assetName: '',
    assetLocation: '',
    joints: first ? [{ key: 1, jointId: first.id, label: first.name }] : [],
  };
}

/** The form with a joint put on; the same joint again is told apart by a number after its label. */
export function withJoint(form: JobForm, joint: JointListItem): JobForm {
  const alike = form.joints.filter((other) => other.jointId === joint.id).length;
  const label = alike === 0 ? joint.name : `${joint.name} ${alike + 1}`;
  return { ...form, joints: [...form.joints, { key: nextKey(form.joints), jointId: joint.id, label }] };
}

interface Ids {
  readonly jobId: string;
  /** For an asset that is new. */
  readonly assetId: string;
}

/** The job that stands in the form; each joint at its released revision. */
export function readJob(
  form: JobForm,
  joints: readonly JointListItem[],
  assets: readonly Asset[],
  ids: Ids,
): JobReading {
  const faults: Fault[] = [];
  const needed = (field: string, text: string) => {
    if (text.trim() === '') faults.push({ field, finding: { kind: 'needed' } });
    return text.trim();
  };
  const known = assets.find((asset) => asset.id === form.assetId);
  const asset = known
    ? { id: known.id, name: known.name, location: known.location }
    : { id: ids.assetId, name: needed('assetName', form.assetName), location: form.assetLocation.trim() };
  const title = needed('title', form.title);
  const chosen = form.joints.flatMap(({ jointId, label }, index) => {
    const revision = joints.find((joint) => joint.id === jointId)?.releasedRevision;
    const text = needed(`joints[${index}].label`, label);
    return typeof revision === 'number' ? [{ jointId, revision, label: text }] : [];
  });
  faults.push(...labelledTwice(form.joints));
  if (chosen.length < 1 || chosen.length > MOST_JOINTS) {
    faults.push({ field: 'joints', finding: { kind: 'whole', from: 1, to: MOST_JOINTS } });
  }
  return { job: faults.length === 0 ? { id: ids.jobId, title, asset, joints: chosen } : undefined, faults };
}

/** Two joints of one job must not carry the same label: nobody could tell which is meant. */
function labelledTwice(joints: readonly JobJointForm[]): readonly Fault[] {
  const labels = joints.map((joint) => joint.label.trim());
  return labels.flatMap((label, index) =>
    label !== '' && labels.indexOf(label) < index
      ? [{ field: `joints[${index}].label`, finding: { kind: 'label-twice', label } } as const]
      : [],
  );
}
