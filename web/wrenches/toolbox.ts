import type { Adapter, CalibrationSummary, Extension, Wrench } from '@clampwright/core/wrench';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { anything, send } from '../app/api.ts';

/** Something to put into the toolbox, or a calibration to put on a wrench. */
export type ToolboxEntry =
  | { readonly kind: 'wrench'; readonly wrench: Wrench }
  | { readonly kind: 'adapter'; readonly adapter: Adapter }
  | { readonly kind: 'extension'; readonly extension: Extension }
  | { readonly kind: 'calibration'; readonly wrenchId: string; readonly calibration: CalibrationSummary };

function post(entry: ToolboxEntry): Promise<unknown> {
  switch (entry.kind) {
    case 'wrench':
      return send('POST', '/toolbox/wrenches', entry.wrench, anything);
    case 'adapter':
      return send('POST', '/toolbox/adapters', entry.adapter, anything);
    case 'extension':
      return send('POST', '/toolbox/extensions', entry.extension, anything);
    case 'calibration':
      return send('POST', `/toolbox/wrenches/${entry.wrenchId}/calibrations`, entry.calibration, anything);
  }
}

export function useToolboxEntry() {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: post,
    onSuccess: () => Promise.all(['toolbox', 'today'].map((key) => queries.invalidateQueries({ queryKey: [key] }))),
  });
}
