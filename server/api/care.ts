import { failed, invalid, ok } from '@clampwright/core/failure';
import { beforeUseCheckSchema, wrenchSchema } from '@clampwright/core/wrench';
import { z } from 'zod';
import { historyOf, historyOfKind } from '../care/histories.ts';
import { anybody, onlyFor } from './access.ts';
import { simulatedComparisonSchema, whereaboutsSchema, wrenchCareSchema } from './contract.ts';
import { json } from './gives.ts';
import { route } from './route.ts';

const wrenchParams = z.object({ id: z.uuid() });

export const showCare = route({
  method: 'get',
  path: '/toolbox/wrenches/{id}/care',
  title: 'show calibrations, checks and recalls of a wrench',
  access: anybody,
  takes: z.object({ params: wrenchParams }),
  gives: json(wrenchCareSchema),
  handle: async ({ params: { id } }, { store }) => {
    const { wrenches, care, pulls } = store;
    const wrench = await wrenches.get(id);
    if (!wrench.ok) return wrench;
    const summaries = await wrenches.calibrations(id);
    if (!summaries.ok) return summaries;
    const calibrations = await care.calibrations.list(id);
    if (!calibrations.ok) return calibrations;
    const checks = await care.checks.list(id);
    if (!checks.ok) return checks;
    const recalls = await care.recalls.list(id);
    if (!recalls.ok) return recalls;
    const pullsSince = await pulls.count(id, { after: wrench.value.calibration?.calibratedOn });
    if (!pullsSince.ok) return pullsSince;
    const history = await historyOf(wrench.value, store);
    if (!history.ok) return history;
    const historyAlike = await historyOfKind(wrench.value, store);
    if (!historyAlike.ok) return historyAlike;
    return ok({
      wrench: wrench.value,
      summaries: summaries.value,
      calibrations: calibrations.value,
      checks: checks.value,
      recalls: recalls.value,
      pullsSince: pullsSince.value,
      history: history.value,
      historyAlike: historyAlike.value,
    });
  },
});

export const holdWrench = route({
  method: 'post',
  path: '/toolbox/wrenches/{id}/whereabouts',
  title: 'note where a wrench is and who has it',
  access: onlyFor('keeper', 'lead', 'technician'),
  takes: z.object({ params: wrenchParams, body: whereaboutsSchema }),
  gives: json(wrenchSchema),
  handle: ({ params, body }, { store }) => store.wrenches.hold(params.id, body),
});

/** A check dated by a clock that runs a little ahead is still a check. */
const AHEAD_MS = 5 * 60_000;

export const addCheck = route({
  method: 'post',
  path: '/toolbox/wrenches/{id}/checks',
  title: 'enter a check before use',
  access: onlyFor('keeper', 'lead', 'technician'),
  takes: z.object({ params: wrenchParams, body: beforeUseCheckSchema }),
  gives: json(beforeUseCheckSchema, 201),
  handle: async ({ params, body }, { store, now }) => {
    if (body.wrenchId !== params.id) return invalid('wrenchId', 'another wrench than in the address', params.id);
    if (Date.parse(body.at) > now().getTime() + AHEAD_MS)
      return invalid('at', `${body.at} has not come yet`, 'a time up to now');
    return store.care.checks.append(body);
  },
});

/** A wrench that shows a little too much, on a reference that scatters a little: enough to practise on. */
export const compareSimulated = route({
  method: 'post',
  path: '/toolbox/wrenches/{id}/compare',
  title: 'let a simulated wrench pull on a simulated reference',
  access: onlyFor('keeper'),
  takes: z.object({ params: wrenchParams, body: z.strictObject({ targetNm: z.number().positive() }) }),
  gives: json(simulatedComparisonSchema),
  handle: async ({ params, body: { targetNm } }, { store, random }) => {
    const wrench = await store.wrenches.get(params.id);
    if (!wrench.ok) return wrench;
    const { connection, resolutionNm } = wrench.value;
    if (connection.kind !== 'simulated')
      return failed({
        kind: 'conflict',
        message: `${wrench.value.name} is a real wrench; read it yourself.`,
        current: wrench.value,
      });
    const [aim = 128, scatter = 128] = random(2);
    const indicatedNm = Math.round((targetNm * (1 + (aim - 128) / 128 / 200)) / resolutionNm) * resolutionNm;
    const referenceNm = indicatedNm / (1.008 + (scatter - 128) / 128 / 500);
    return ok({ indicatedNm: Number(indicatedNm.toFixed(6)), referenceNm: Number(referenceNm.toFixed(2)) });
  },
});
