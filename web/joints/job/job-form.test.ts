import { expect, it } from 'vitest';
import { blankJob, type JobForm, readJob, released, withJoint } from './job-form.ts';

const WHEEL = {
  id: '01920000-0000-7000-8000-000000000001',
  name: 'Wheel, 5 studs',
  thread: 'M12x1.5',
  positions: 5,
  latestRevision: 3,
  latestStatus: 'draft',
  releasedRevision: 2,
  demo: false,
} as const;
const DRAFT = { ...WHEEL, id: '01920000-0000-7000-8000-000000000002', name: 'Cover', releasedRevision: null };
const VAN = { id: '01920000-0000-7000-8000-00000000000a', name: 'Service vehicle 2', location: 'Valley station' };
const IDS = { jobId: '01920000-0000-7000-8000-0000000000b1', assetId: '01920000-0000-7000-8000-0000000000b2' };

const filled: JobForm = { ...blankJob([WHEEL], [VAN], undefined), title: 'Winter wheels' };

it('takes each joint at its released revision, though a newer draft exists', () => {
  expect(readJob(filled, [WHEEL], [VAN], IDS).job).toEqual({
    id: IDS.jobId,
    title: 'Winter wheels',
    asset: VAN,
    joints: [{ jointId: WHEEL.id, revision: 2, label: 'Wheel, 5 studs' }],
  });
});

it('offers no joint without a released revision', () => {
  expect(released([WHEEL, DRAFT])).toEqual([WHEEL]);
});

it('numbers the labels of the same joint taken several times', () => {
  const four = [1, 2, 3].reduce((form) => withJoint(form, WHEEL), filled);
  expect(four.joints.map((joint) => joint.label)).toEqual([
    'Wheel, 5 studs',
    'Wheel, 5 studs 2',
    'Wheel, 5 studs 3',
    'Wheel, 5 studs 4',
  ]);
});

it('refuses two joints under one label, beside the second', () => {
  const twice = { ...filled, joints: [...filled.joints, { key: 2, jointId: WHEEL.id, label: 'Wheel, 5 studs ' }] };
  const { job, faults } = readJob(twice, [WHEEL], [VAN], IDS);
  expect(job).toBeUndefined();
  expect(faults).toEqual([{ field: 'joints[1].label', finding: { kind: 'label-twice', label: 'Wheel, 5 studs' } }]);
});

it('writes a new asset when none is chosen, and needs its name', () => {
  const unnamed = { ...filled, assetId: '' };
  expect(readJob(unnamed, [WHEEL], [VAN], IDS).faults.map((fault) => fault.field)).toEqual(['assetName']);
  const named = { ...unnamed, assetName: ' Tower 7 ', assetLocation: 'Upper line' };
  expect(readJob(named, [WHEEL], [VAN], IDS).job?.asset).toEqual({
    id: IDS.assetId,
    name: 'Tower 7',
    location: 'Upper line',
  });
});

it('needs at least one joint', () => {
  expect(readJob({ ...filled, joints: [] }, [WHEEL], [VAN], IDS).faults.map((fault) => fault.field)).toEqual([
    'joints',
  ]);
});

it('never puts another joint in the place of one that was asked for', () => {
  expect(blankJob([WHEEL], [VAN], DRAFT.id).joints).toEqual([]);
  expect(blankJob([WHEEL], [VAN], WHEEL.id).joints).toMatchObject([{ jointId: WHEEL.id }]);
});
