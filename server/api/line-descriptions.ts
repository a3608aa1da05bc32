import { lineDescriptionSchema } from '@clampwright/core/line';
import { z } from 'zod';
import { anybody, onlyFor } from './access.ts';
import { json, nothing } from './gives.ts';
import { route } from './route.ts';

export const listLineDescriptions = route({
  method: 'get',
  path: '/line-descriptions',
  title: 'list how the lines of wrenches are read',
  access: anybody,
  takes: z.object({}),
  gives: json(z.array(lineDescriptionSchema)),
  handle: (_, { store }) => store.lineDescriptions.list(),
});

export const saveLineDescription = route({
  method: 'post',
  path: '/line-descriptions',
  title: 'save a line description under its name',
  access: onlyFor('keeper', 'lead'),
  takes: z.object({ body: lineDescriptionSchema }),
  gives: json(lineDescriptionSchema),
  handle: async ({ body }, { store, devices }, { demo }) => {
    const saved = await store.lineDescriptions.save(body, { demo });
    const kept = saved.ok ? await store.devices.list() : saved;
    if (!kept.ok) return kept;
    // Devices that are at work are read by the new description from now on.
    for (const { device } of kept.value) {
      if (device.way.kind === 'serial' && device.way.lines === body.name) await devices.start(device);
    }
    return saved;
  },
});

export const removeLineDescription = route({
  method: 'delete',
  path: '/line-descriptions/{name}',
  title: 'remove a line description',
  access: onlyFor('keeper', 'lead'),
  takes: z.object({ params: z.object({ name: z.string() }) }),
  gives: nothing,
  handle: ({ params }, { store }) => store.lineDescriptions.remove(params.name),
});
