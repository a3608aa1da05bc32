import type { BeforeUseCheck, Calibration, ReferenceStandard } from '@clampwright/core/wrench';
import type { NewRecall, NewRecheck, Whereabouts } from '@clampwright/server/contract';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { anything, send } from '../app/api.ts';

/** Something the keeper says of a wrench, a reference or a recall. */
export type CareEntry =
  | { readonly kind: 'calibration'; readonly calibration: Calibration }
  | { readonly kind: 'check'; readonly check: BeforeUseCheck }
  | { readonly kind: 'whereabouts'; readonly wrenchId: string; readonly whereabouts: Whereabouts }
  | { readonly kind: 'reference'; readonly reference: ReferenceStandard }
  | { readonly kind: 'recall'; readonly recall: NewRecall }
  | { readonly kind: 'recheck'; readonly recallId: string; readonly recheck: NewRecheck };

function post(entry: CareEntry): Promise<unknown> {
  switch (entry.kind) {
    case 'calibration':
      return send('POST', '/calibrations', entry.calibration, anything);
    case 'check':
      return send('POST', `/toolbox/wrenches/${entry.check.wrenchId}/checks`, entry.check, anything);
    case 'whereabouts':
      return send('POST', `/toolbox/wrenches/${entry.wrenchId}/whereabouts`, entry.whereabouts, anything);
    case 'reference':
      return send('POST', '/references', entry.reference, anything);
    case 'recall':
      return send('POST', '/recalls', entry.recall, anything);
    case 'recheck':
      return send('POST', `/recalls/${entry.recallId}/rechecks`, entry.recheck, anything);
  }
}

const TOUCHED = ['toolbox', 'today', 'care', 'references', 'recalls', 'recall'];

export function useCareEntry() {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: post,
    onSuccess: () => Promise.all(TOUCHED.map((key) => queries.invalidateQueries({ queryKey: [key] }))),
  });
}
