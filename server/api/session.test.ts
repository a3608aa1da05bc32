import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { cookieIn, have, identity, PIN, personId, type Workshop, workshop } from '../testing/workshop.ts';

// Each PIN that is tried costs a tenth of a second and more, on purpose.
vi.setConfig({ testTimeout: 30_000 });

let shop: Workshop;
beforeEach(async () => {
  shop = await workshop();
});
afterEach(() => shop.close());

const signIn = (pin: string) => shop.ask('POST', '/session', { personId: personId('technician'), pin });

describe('signing in', () => {
  it('gives the browser a token that no script sees and no other site sends', async () => {
    const { headers } = await signIn(PIN);
    expect(headers.get('set-cookie')).toMatch(
      /^clampwright-session=[\w-]{43}; Max-Age=43200; Path=\/; HttpOnly; SameSite=Strict$/,
    );
  });

  it('tells who is at this screen, and nobody at another', async () => {
    const cookie = cookieIn((await signIn(PIN)).headers);
    expect((await shop.ask('GET', '/session', undefined, cookie)).body).toMatchObject({
      person: { name: 'The technician' },
      firstStart: false,
    });
    expect((await shop.ask('GET', '/session')).body).toMatchObject({ person: null });
  });

  it('refuses a wrong PIN', async () => {
    const answer = await signIn('0000');
    expect(answer.body).toMatchObject({ status: 401, type: 'urn:problem-type:not-signed-in' });
    expect(answer.headers.get('set-cookie')).toBeNull();
  });

  it('makes whoever guesses wait, also with the right PIN', async () => {
    for (let time = 0; time < 5; time++) await signIn('0000');
    const answer = await signIn(PIN);
    expect(answer.body).toMatchObject({ status: 429, retryAfterS: 900 });
    expect(answer.headers.get('retry-after')).toBe('900');
    shop.wait(15 * 60_000);
    expect((await signIn(PIN)).status).toBe(200);
  });

  it('does not let guesses that come all at once past the count', async () => {
    const answers = await Promise.all(Array.from({ length: 8 }, () => signIn('0000')));
    expect(answers.filter(({ status }) => status === 429)).toHaveLength(3);
  });

  it('ends with the shift, and when somebody leaves the screen', async () => {
    const cookie = cookieIn((await signIn(PIN)).headers);
    shop.wait(12 * 3_600_000);
    expect((await shop.ask('GET', '/session', undefined, cookie)).body).toMatchObject({ person: null });
    const next = cookieIn((await signIn(PIN)).headers);
    expect((await shop.ask('DELETE', '/session', undefined, next)).status).toBe(204);
    expect((await shop.ask('GET', '/session', undefined, next)).body).toMatchObject({ person: null });
  });

  it('never tells what proves who somebody is', async () => {
    const { text } = await shop.ask('GET', '/people');
    expect(text).toContain('The lead');
    expect(text).not.toMatch(/argon2|pinHash/);
  });
});

describe('a lead’s word at somebody else’s screen', () => {
  const give = async (personIdOfLead: string, pin: string) => {
    const cookie = cookieIn((await signIn(PIN)).headers);
    const command = { kind: 'note', text: 'Rain since ten.' };
    return shop.ask(
      'POST',
      `/jobs/${identity('no job')}/commands`,
      { command, lead: { personId: personIdOfLead, pin } },
      cookie,
    );
  };

  it('counts with the lead’s PIN', async () => {
    expect((await give(personId('lead'), PIN)).body).toMatchObject({ status: 404, what: 'job' });
  });

  it('does not count with another PIN', async () => {
    expect((await give(personId('lead'), '0000')).body).toMatchObject({ status: 401 });
  });

  it('does not count from somebody who is no lead', async () => {
    expect((await give(personId('keeper'), PIN)).body).toMatchObject({ status: 403, needs: 'lead' });
  });
});

describe('the people of the demonstration, whose PIN everybody knows', () => {
  const demoId = identity('demo lead');
  let cookie: string;
  beforeEach(async () => {
    const { pinHash } = have(await shop.store.people.get(personId('lead')));
    have(await shop.store.people.add({ id: demoId, name: 'Demo Lead', role: 'lead', pinHash }, { demo: true }));
    cookie = cookieIn((await shop.ask('POST', '/session', { personId: demoId, pin: PIN })).headers);
  });

  it('do not act for a workshop that has people of its own', async () => {
    const asset = { id: identity('tower 9'), name: 'Tower 9', location: '' };
    expect((await shop.ask('POST', '/assets', asset, cookie)).body).toMatchObject({
      status: 403,
      type: 'urn:problem-type:demonstration-only',
    });
    expect((await shop.ask('POST', '/people', { name: 'Eve', role: 'lead', pin: '1234' }, cookie)).status).toBe(403);
  });

  it('go with the demonstration, and are signed out by it', async () => {
    const lead = await shop.signIn('lead');
    expect((await shop.ask('DELETE', '/demo', undefined, lead)).status).toBe(204);
    expect((await shop.ask('GET', '/session', undefined, cookie)).body).toMatchObject({ person: null });
    expect((await shop.ask('GET', '/people')).text).not.toContain('Demo Lead');
  });
});
