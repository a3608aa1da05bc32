import { failed } from '@clampwright/core/failure';
import { z } from 'zod';
import { anybody } from './access.ts';
import { nothing } from './gives.ts';
import { route } from './route.ts';

export const removeDemo = route({
  method: 'delete',
  path: '/demo',
  title: 'remove the demonstration',
  access: anybody,
  takes: z.object({}),
  gives: nothing,
  handle: async (_, { store }, who) => {
    const people = await store.people.list();
    if (!people.ok) return people;
    // While nobody of the workshop's own is there, there is nothing of theirs to guard.
    const mayRemove = who?.role === 'lead' || people.value.every(({ demo }) => demo);
    return mayRemove
      ? store.demo.remove()
      : failed({ kind: 'forbidden', action: 'remove the demonstration', needs: 'lead' });
  },
});
