export { type DeviceCounts, deviceCountsSchema } from './counts.ts';
export {
  type Device,
  deviceSchema,
  type OpcUaWay,
  opcUaWaySchema,
  SECURITY_MODES,
  SECURITY_POLICIES,
  type WayIn,
} from './device.ts';
export { withoutPassword } from './without-password.ts';
