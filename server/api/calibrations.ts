import { failed, ok, type Result } from '@clampwright/core/failure';
import { isTorqueUnit, LANGUAGES, unitsOf } from '@clampwright/core/quantity';
import { type Certified, canonical, certificateDocument } from '@clampwright/core/record';
import {
  type Calibration,
  calibrationSchema,
  judgeCalibration,
  type ReferenceStandard,
} from '@clampwright/core/wrench';
import { writeDcc } from '@clampwright/report';
import type { Store } from '@clampwright/store';
import { z } from 'zod';
import { anybody, onlyFor } from './access.ts';
import { keptCalibrationSchema } from './contract.ts';
import { json, media } from './gives.ts';
import { PAPER_FORMS, paperQuery, paperResponse } from './paper.ts';
import { type Route, route } from './route.ts';

export const calibrationParams = z.object({ id: z.uuid() });

const certificateQuery = paperQuery.extend({
  unit: z.enum(unitsOf('torque').filter(isTorqueUnit)).default('N·m'),
});

const dccQuery = z.strictObject({
  language: z.enum(LANGUAGES).default('en'),
  country: z
    .string()
    .regex(/^[A-Z]{2}$/)
    .default('CH')
    .describe('where it was calibrated, ISO 3166-1'),
  laboratory: z.string().trim().min(1).max(200).optional().describe('who calibrated; left out: the place kept with it'),
  customer: z.string().trim().min(1).max(200).optional().describe('whose wrench it is; left out: the same workshop'),
});

/** As the packages of this repository are numbered. */
const RELEASE = '0.1.0';

export const showCalibration = route({
  method: 'get',
  path: '/calibrations/{id}',
  title: 'show a calibration with its readings',
  access: anybody,
  takes: z.object({ params: calibrationParams }),
  gives: json(calibrationSchema),
  handle: ({ params }, { store }) => store.care.calibrations.get(params.id),
});

export const keepCalibration = route({
  method: 'post',
  path: '/calibrations',
  title: 'keep a calibration with its readings',
  access: onlyFor('keeper'),
  takes: z.object({ body: calibrationSchema }),
  gives: json(keptCalibrationSchema, 201),
  handle: async ({ body }, { store, now }) => {
    const wrench = await store.wrenches.get(body.wrenchId);
    if (!wrench.ok) return wrench;
    const reference = await sameReference(store, body.reference);
    if (!reference.ok) return reference;
    const judged = judgeCalibration(body, wrench.value, now().toISOString().slice(0, 10));
    if (!judged.ok) return judged;
    const kept = await store.care.calibrations.append(body, judged.value.summary);
    return kept.ok ? ok({ calibration: body, wrench: kept.value }) : kept;
  },
});

/** What is copied into a calibration must be what the register knows: nobody makes a reference valid by typing. */
async function sameReference(store: Store, copied: Calibration['reference']): Promise<Result<ReferenceStandard>> {
  const certificates = await store.references.history(copied.id);
  if (!certificates.ok) return certificates;
  const same = certificates.value.find((one) => canonical(one) === canonical(copied));
  if (same) return ok(same);
  const current = certificates.value.at(-1);
  if (!current) return failed({ kind: 'not-found', what: 'reference', id: copied.id });
  return failed({
    kind: 'conflict',
    message: `${current.name} is kept with other figures; choose it again.`,
    current,
  });
}

/** The certificate in each form. */
export const certificates: readonly Route[] = PAPER_FORMS.map((form) =>
  route({
    method: 'get',
    path: `/calibrations/{id}/certificate.${form.extension}`,
    title: `give the certificate of a calibration as ${form.extension.toUpperCase()}`,
    access: anybody,
    takes: z.object({ params: calibrationParams, query: certificateQuery }),
    gives: media(form.type),
    handle: async ({ params, query: { unit, ...hand } }, { store }) => {
      const certified = await certifiedIn(store, params.id);
      if (!certified.ok) return certified;
      const document = certificateDocument(certified.value, { ...hand, unit });
      return ok(await paperResponse(form, document, certificateName(certified.value)));
    },
  }),
);

/** The certificate for machines, with the calibration as it is kept enclosed, so that it can be read back. */
export const digitalCertificate = route({
  method: 'get',
  path: '/calibrations/{id}/certificate.xml',
  title: 'give the certificate of a calibration as Digital Calibration Certificate',
  access: anybody,
  takes: z.object({ params: calibrationParams, query: dccQuery }),
  gives: media('application/xml'),
  handle: async ({ params, query }, { store }) => {
    const certified = await certifiedIn(store, params.id);
    if (!certified.ok) return certified;
    const { language, country, laboratory, customer } = query;
    const workshop = certified.value.calibration.place ?? certified.value.calibration.by;
    const xml = writeDcc(certified.value, {
      language,
      country,
      laboratory: laboratory ?? workshop,
      customer: customer ?? workshop,
      software: { name: 'Clampwright', release: RELEASE },
    });
    return ok(
      new Response(xml, {
        headers: {
          'content-type': 'application/xml',
          'content-disposition': `attachment; filename="${certificateName(certified.value)}.xml"`,
          'cache-control': 'no-store',
        },
      }),
    );
  },
});

const certificateName = ({ calibration, wrench }: Certified): string =>
  `certificate_${calibration.calibratedOn}_${wrench.serial}`.replaceAll(/[^\w-]+/g, '-');

async function certifiedIn(store: Store, id: string): Promise<Result<Certified>> {
  const calibration = await store.care.calibrations.get(id);
  if (!calibration.ok) return calibration;
  const wrench = await store.wrenches.get(calibration.value.wrenchId);
  if (!wrench.ok) return wrench;
  // it was judged when it was kept: its own day is the day to judge it by
  const judged = judgeCalibration(calibration.value, wrench.value, calibration.value.calibratedOn);
  if (!judged.ok) return judged;
  const { found, left } = judged.value;
  return ok({ calibration: calibration.value, wrench: wrench.value, found, left });
}
