import { ok } from '@clampwright/core/failure';
import { z } from 'zod';
import type { Deps } from '../deps.ts';
import { liveStream } from '../live/stream.ts';
import { onlyFor } from './access.ts';
import { liveReadingSchema } from './contract.ts';
import { media } from './gives.ts';
import type { Outcome } from './problem.ts';
import { type Route, route } from './route.ts';

const idParams = z.object({ id: z.uuid() });
const keepers = onlyFor('keeper');
const events = media('text/event-stream', liveReadingSchema);

const hearWrench = route({
  method: 'get',
  path: '/toolbox/wrenches/{id}/readings',
  title:
    'listen to a wrench that is calibrated, on its port or by its device (server-sent events, one of these in each)',
  access: keepers,
  takes: z.object({ params: idParams }),
  gives: events,
  handle: async ({ params }, deps) => {
    const wrench = await deps.store.wrenches.get(params.id);
    return wrench.ok ? streamOf(deps, params.id, deps.ports.lend(wrench.value)) : wrench;
  },
});

const hearDevice = route({
  method: 'get',
  path: '/devices/{id}/readings',
  title: 'listen to a device beside a wrench that is calibrated (server-sent events, one of these in each)',
  access: keepers,
  takes: z.object({ params: idParams }),
  gives: events,
  handle: async ({ params }, deps) => {
    const device = await deps.store.devices.get(params.id);
    return device.ok ? streamOf(deps, params.id) : device;
  },
});

function streamOf({ readings, closing }: Deps, id: string, onEnd: () => void = () => undefined): Outcome<Response> {
  const stream = liveStream(id, readings, closing, onEnd);
  if (stream) return ok(stream);
  onEnd();
  return {
    ok: false,
    failure: {
      kind: 'too-many-listeners',
      message: 'Too many calibrations listen already; close some of them.',
      retryAfterS: 30,
    },
  };
}

export const readings: readonly Route[] = [hearWrench, hearDevice];
