import { z } from 'zod';
import { newId } from '../deps.ts';
import { enter, mayEnter } from '../door.ts';
import { simulatedPull } from '../wrenches/simulated.ts';
import { workers } from './access.ts';
import { commandResultSchema, simulateSchema } from './contract.ts';
import { json } from './gives.ts';
import { jobParams } from './job-params.ts';
import { play } from './play.ts';
import { route } from './route.ts';

export const simulate = route({
  method: 'post',
  path: '/jobs/{id}/simulate',
  title: 'pull with the simulated wrench',
  access: workers,
  takes: z.object({ params: jobParams, body: simulateSchema }),
  gives: json(commandResultSchema),
  handle: async ({ params, body }, deps, by) => {
    const allowed = await mayEnter(deps, params.id, { by });
    if (!allowed.ok) return allowed;
    const state = await deps.store.jobs.state(params.id);
    if (!state.ok) return state;
    const pull = simulatedPull(state.value, body, { id: newId(deps), now: deps.now().toISOString() });
    if (!pull.ok) return pull;
    const { incoming, countedDeg } = pull.value;
    if (incoming.trace) await play(deps, params.id, body.jointRef, { ...incoming.trace, angleDeg: countedDeg });
    return enter(deps, params.id, incoming, { by });
  },
});
