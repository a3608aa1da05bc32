import type { Device } from '@clampwright/core/device';
import { type LineDescription, lineDescriptionSchema } from '@clampwright/core/line';
import type { DeviceTest, ShownDevice } from '@clampwright/server/contract';
import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import { anything, get, having, listOf, send } from '../app/api.ts';

const isShownDevice = having<ShownDevice>('device', 'standing', 'hasKey');
const isDescription = (value: unknown): value is LineDescription => lineDescriptionSchema.safeParse(value).success;

/** How often the standing of the devices is asked for while somebody looks, ms. */
const LOOK_EVERY_MS = 1000;

export const devicesQuery = queryOptions({
  queryKey: ['devices'],
  queryFn: () => get('/devices', listOf(isShownDevice)),
  refetchInterval: LOOK_EVERY_MS,
});

export const lineDescriptionsQuery = queryOptions({
  queryKey: ['line-descriptions'],
  queryFn: () => get('/line-descriptions', listOf(isDescription)),
});

export const mappingNamesQuery = queryOptions({
  queryKey: ['mappings'],
  queryFn: () => get('/mappings', listOf(having<{ readonly name: string }>('name'))),
});

/** What is done about devices and how their lines are read. */
export type DeviceAct =
  | { readonly kind: 'save'; readonly device: Device; readonly keepPassword: boolean }
  | { readonly kind: 'remove'; readonly id: string }
  | { readonly kind: 'revoke-key'; readonly id: string }
  | { readonly kind: 'save-lines'; readonly description: LineDescription }
  | { readonly kind: 'remove-lines'; readonly name: string };

function done(act: DeviceAct): Promise<unknown> {
  switch (act.kind) {
    case 'save':
      return send('POST', '/devices', { device: act.device, keepPassword: act.keepPassword }, anything);
    case 'remove':
      return send('DELETE', `/devices/${act.id}`, undefined, anything);
    case 'revoke-key':
      return send('DELETE', `/devices/${act.id}/key`, undefined, anything);
    case 'save-lines':
      return send('POST', '/line-descriptions', act.description, anything);
    case 'remove-lines':
      return send('DELETE', `/line-descriptions/${encodeURIComponent(act.name)}`, undefined, anything);
  }
}

export function useDeviceAct() {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: done,
    onSuccess: () =>
      Promise.all(['devices', 'line-descriptions'].map((key) => queries.invalidateQueries({ queryKey: [key] }))),
  });
}

export const testDevice = (id: string): Promise<DeviceTest> =>
  send('POST', `/devices/${id}/test`, undefined, having<DeviceTest>('works', 'detail'));

export const makeKey = (id: string): Promise<{ readonly key: string }> =>
  send('POST', `/devices/${id}/key`, undefined, having<{ readonly key: string }>('key'));
