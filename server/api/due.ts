import { ok } from '@clampwright/core/failure';
import { say, sayDate } from '@clampwright/core/language';
import { LANGUAGES, type Language, showNumber } from '@clampwright/core/quantity';
import { PAPERS } from '@clampwright/core/record';
import { type DueDay, renderCalendar, renderLabels } from '@clampwright/report';
import { z } from 'zod';
import { dueItems } from '../care/due-items.ts';
import { anybody } from './access.ts';
import { type DueItem, dueItemSchema } from './contract.ts';
import { json, media } from './gives.ts';
import { route } from './route.ts';

export const listDue = route({
  method: 'get',
  path: '/due',
  title: 'list what wants to be calibrated, by day and by pulls',
  access: anybody,
  takes: z.object({}),
  gives: json(z.array(dueItemSchema)),
  handle: (_, { store, now }) => dueItems(store, now().toISOString().slice(0, 10)),
});

const languageQuery = z.strictObject({ language: z.enum(LANGUAGES).default('en') });

export const dueCalendar = route({
  method: 'get',
  path: '/due.ics',
  title: 'give the days on which calibrations are due as a calendar file',
  access: anybody,
  takes: z.object({ query: languageQuery }),
  gives: media('text/calendar; charset=utf-8'),
  handle: async ({ query: { language } }, { store, now }) => {
    const stampedAt = now().toISOString();
    const items = await dueItems(store, stampedAt.slice(0, 10));
    if (!items.ok) return items;
    const days = items.value.flatMap((item) => dueDay(item, language));
    return ok(
      kept(
        renderCalendar(say(language, 'due.calendar'), days, stampedAt),
        'text/calendar; charset=utf-8',
        'calibrations.ics',
      ),
    );
  },
});

function dueDay(
  { id, name, serial, place, certificate, calibratedOn, dueOn, dueAfterPulls }: DueItem,
  language: Language,
): DueDay[] {
  if (dueOn === undefined || certificate === undefined || calibratedOn === undefined) return [];
  const on = sayDate(calibratedOn, language);
  return [
    {
      uid: id,
      day: dueOn,
      summary: say(language, 'due.calibrate', { name, serial }),
      description: [
        say(language, 'due.described', { certificate, on }),
        ...(dueAfterPulls === undefined
          ? []
          : [say(language, 'due.or-pulls', { pulls: showNumber(dueAfterPulls, language) })]),
      ].join(' '),
      location: place,
    },
  ];
}

const labelsQuery = languageQuery.extend({
  paper: z.enum(PAPERS).default('A4'),
  id: z.uuid().optional().describe('of one wrench or reference; left out: all'),
});

export const dueLabels = route({
  method: 'get',
  path: '/labels.pdf',
  title: 'give labels with a barcode for wrenches and reference standards',
  access: anybody,
  takes: z.object({ query: labelsQuery }),
  gives: media('application/pdf'),
  handle: async ({ query: { language, paper, id } }, { store, now }) => {
    const items = await dueItems(store, now().toISOString().slice(0, 10));
    if (!items.ok) return items;
    const wanted = items.value
      .filter((item) => id === undefined || item.id === id)
      .toSorted((a, b) => (a.serial < b.serial ? -1 : 1));
    const datedAt = `${
      wanted
        .flatMap(({ calibratedOn }) => calibratedOn ?? [])
        .toSorted()
        .at(-1) ?? '2000-01-01'
    }T00:00:00.000Z`;
    const pdf = await renderLabels(wanted, language, datedAt, paper);
    return ok(kept(pdf, 'application/pdf', 'labels.pdf'));
  },
});

const kept = (content: string | Uint8Array, type: string, name: string): Response =>
  new Response(typeof content === 'string' ? content : Buffer.from(content), {
    headers: {
      'content-type': type,
      'content-disposition': `attachment; filename="${name}"`,
      'cache-control': 'no-store',
    },
  });
