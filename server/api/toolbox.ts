import { ok, type Result } from '@clampwright/core/failure';
import { adapterSchema, extensionSchema, toolClass, type Wrench, wrenchSchema } from '@clampwright/core/wrench';
import type { Register, Store } from '@clampwright/store';
import { z } from 'zod';
import { anybody, onlyFor } from './access.ts';
import { newCalibrationSchema, toolboxSchema } from './contract.ts';
import { type Gives, json } from './gives.ts';
import { type Route, route } from './route.ts';

export const showToolbox = route({
  method: 'get',
  path: '/toolbox',
  title: 'show wrenches, adapters and extensions',
  access: anybody,
  takes: z.object({}),
  gives: json(toolboxSchema),
  handle: async (_, { store }) => {
    const wrenches = await store.wrenches.list();
    if (!wrenches.ok) return wrenches;
    const adapters = await store.adapters.list();
    if (!adapters.ok) return adapters;
    const extensions = await store.extensions.list();
    if (!extensions.ok) return extensions;
    return ok({ wrenches: wrenches.value, adapters: adapters.value, extensions: extensions.value });
  },
});

/** Listing and adding are alike for everything in the toolbox. */
function shelf<Thing>(
  {
    name,
    one,
    schema,
    check = ok,
  }: {
    readonly name: string;
    readonly one: string;
    readonly schema: z.ZodType<Thing>;
    /** What a schema cannot know. */
    readonly check?: (thing: Thing) => Result<Thing>;
  },
  gives: { readonly list: Gives<readonly Thing[]>; readonly one: Gives<Thing> },
  registerIn: (store: Store) => Register<Thing>,
): readonly Route[] {
  return [
    route({
      method: 'get',
      path: `/toolbox/${name}`,
      title: `list the ${name}`,
      access: anybody,
      takes: z.object({}),
      gives: gives.list,
      handle: (_, { store }) => registerIn(store).list(),
    }),
    route({
      method: 'post',
      path: `/toolbox/${name}`,
      title: `add ${one}`,
      access: onlyFor('keeper', 'lead'),
      takes: z.object({ body: schema }),
      gives: gives.one,
      handle: async ({ body }, { store }, { demo }) => {
        const checked = check(body);
        return checked.ok ? registerIn(store).add(checked.value, { demo }) : checked;
      },
    }),
  ];
}

/** A class that the type has not has no permissible deviation: it could never be calibrated. */
function ofItsType(wrench: Wrench): Result<Wrench> {
  const known = toolClass(wrench.type, wrench.class);
  return known.ok ? ok(wrench) : known;
}

export const shelves: readonly Route[] = [
  ...shelf(
    { name: 'wrenches', one: 'a wrench', schema: wrenchSchema, check: ofItsType },
    { list: json(z.array(wrenchSchema)), one: json(wrenchSchema, 201) },
    ({ wrenches }) => wrenches,
  ),
  ...shelf(
    { name: 'adapters', one: 'an adapter', schema: adapterSchema },
    { list: json(z.array(adapterSchema)), one: json(adapterSchema, 201) },
    ({ adapters }) => adapters,
  ),
  ...shelf(
    { name: 'extensions', one: 'an extension', schema: extensionSchema },
    { list: json(z.array(extensionSchema)), one: json(extensionSchema, 201) },
    ({ extensions }) => extensions,
  ),
];

const wrenchParams = z.object({ id: z.uuid() });

export const listCalibrations = route({
  method: 'get',
  path: '/toolbox/wrenches/{id}/calibrations',
  title: 'list the calibrations of a wrench',
  access: anybody,
  takes: z.object({ params: wrenchParams }),
  gives: json(z.array(newCalibrationSchema)),
  handle: ({ params }, { store }) => store.wrenches.calibrations(params.id),
});

export const addCalibration = route({
  method: 'post',
  path: '/toolbox/wrenches/{id}/calibrations',
  title: 'enter a calibration',
  access: onlyFor('keeper'),
  takes: z.object({ params: wrenchParams, body: newCalibrationSchema }),
  gives: json(wrenchSchema, 201),
  handle: ({ params, body }, { store }) => store.wrenches.calibrate(params.id, body),
});
