import type { Device } from './device.ts';

/** A device as anybody may see it: its password stays with the server. */
export function withoutPassword(device: Device): Device {
  if (device.way.kind !== 'opc-ua') return device;
  const { password: _, ...way } = device.way;
  return { ...device, way };
}
