import { failed, ok } from '@clampwright/core/failure';
import { checkJoint, jointRevisionSchema } from '@clampwright/core/joint';
import { countPlaces } from '@clampwright/core/layout';
import type { JointSummary } from '@clampwright/store';
import { z } from 'zod';
import { pullsOfJoint } from '../joints/pulls-of-joint.ts';
import { anybody, onlyFor } from './access.ts';
import {
  type JointListItem,
  jointHistorySchema,
  jointListItemSchema,
  jointPullsSchema,
  saveJointSchema,
} from './contract.ts';
import { json } from './gives.ts';
import { route } from './route.ts';

const jointParams = z.object({ id: z.uuid() });

export const listJoints = route({
  method: 'get',
  path: '/joints',
  title: 'list the joints',
  access: anybody,
  takes: z.object({}),
  gives: json(z.array(jointListItemSchema)),
  handle: async (_, { store }) => {
    const joints = await store.joints.list();
    return joints.ok ? ok(joints.value.map(listItem)) : joints;
  },
});

const listItem = ({ latest, releasedRevision, demo }: JointSummary): JointListItem => ({
  id: latest.id,
  name: latest.content.name,
  thread: latest.content.fastener.thread,
  positions: countPlaces(latest.content.layout),
  latestRevision: latest.revision,
  latestStatus: latest.status,
  releasedRevision: releasedRevision ?? null,
  demo,
});

export const showJoint = route({
  method: 'get',
  path: '/joints/{id}',
  title: 'show a joint with all its revisions',
  access: anybody,
  takes: z.object({ params: jointParams }),
  gives: json(jointHistorySchema),
  handle: ({ params }, { store }) => store.joints.history(params.id),
});

export const showJointPulls = route({
  method: 'get',
  path: '/joints/{id}/revisions/{revision}/pulls',
  title: 'give what was pulled on a joint revision, step by step, for capability and control chart',
  access: anybody,
  takes: z.object({ params: jointParams.extend({ revision: z.coerce.number().int().positive() }) }),
  gives: json(jointPullsSchema),
  handle: ({ params }, { store }) => pullsOfJoint(store, params),
});

export const saveJoint = route({
  method: 'post',
  path: '/joints',
  title: 'write a joint',
  access: onlyFor('lead'),
  takes: z.object({ body: saveJointSchema }),
  gives: json(jointRevisionSchema),
  handle: ({ body }, { store }, { demo }) => store.joints.saveDraft(body.id, body.content, { demo }),
});

export const releaseJoint = route({
  method: 'post',
  path: '/joints/{id}/release',
  title: 'release a joint',
  access: onlyFor('lead'),
  takes: z.object({ params: jointParams }),
  gives: json(jointRevisionSchema),
  handle: async ({ params }, { store }) => {
    const history = await store.joints.history(params.id);
    if (!history.ok) return history;
    const latest = history.value.revisions.at(-1);
    if (!latest) return failed({ kind: 'not-found', what: 'joint', id: params.id });
    const [contradiction] = checkJoint(latest.content);
    return contradiction ? failed(contradiction) : store.joints.release(latest.id, latest.revision);
  },
});
