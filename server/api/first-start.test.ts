import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { cookieIn, PIN, type Workshop, workshop } from '../testing/workshop.ts';

let shop: Workshop;
beforeEach(async () => {
  shop = await workshop({ people: false });
});
afterEach(() => shop.close());

const add = (name: string, role: string, as?: string) => shop.ask('POST', '/people', { name, role, pin: PIN }, as);

describe('the first start', () => {
  it('says that nobody is there yet', async () => {
    expect((await shop.ask('GET', '/session')).body).toEqual({ person: null, firstStart: true, demoLoaded: false });
  });

  it('lets whoever begins add the first lead, and nobody else after that', async () => {
    expect((await add('Ada Quill', 'lead')).status).toBe(201);
    expect((await add('Ben Ord', 'lead')).body).toMatchObject({ status: 401 });
  });

  it('asks that the first one be a lead, who can add the others', async () => {
    expect((await add('Ben Ord', 'technician')).body).toMatchObject({ status: 400, field: 'role', expected: 'lead' });
    const { id } = z.object({ id: z.string() }).parse((await add('Ada Quill', 'lead')).body);
    const lead = cookieIn((await shop.ask('POST', '/session', { personId: id, pin: PIN })).headers);
    expect((await add('Ben Ord', 'technician', lead)).status).toBe(201);
  });

  it('lets whoever is there remove the demonstration', async () => {
    expect((await shop.ask('DELETE', '/demo')).status).toBe(204);
  });
});
