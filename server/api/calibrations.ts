import { failed, ok, type Result } from '@clampwright/core/failure';
import { canonical } from '@clampwright/core/record';
import {
  type Calibration,
  calibrationSchema,
  judgeCalibration,
  type ReferenceStandard,
} from '@clampwright/core/wrench';
import type { Store } from '@clampwright/store';
import { z } from 'zod';
import { anybody, onlyFor } from './access.ts';
import { keptCalibrationSchema } from './contract.ts';
import { json } from './gives.ts';
import { route } from './route.ts';

export const calibrationParams = z.object({ id: z.uuid() });

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
