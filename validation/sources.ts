import type { Source } from './check.ts';
import { ADAPTER_SOURCES } from './checks/adapters.ts';
import { ASSEMBLY_SOURCES } from './checks/assembly.ts';
import { BOLTING_SOURCES } from './checks/bolting.ts';
import { ORDER_SOURCES } from './checks/orders.ts';
import { STRENGTH_SOURCES } from './checks/strength.ts';
import { THREAD_SOURCES } from './checks/threads.ts';
import { TORQUE_RULE_SOURCES } from './checks/torque-rules.ts';
import { UNCERTAINTY_SOURCES } from './checks/uncertainty.ts';
import { UNIT_SOURCES } from './checks/units.ts';

/** Every source that we are held to; to add one, add a file of checks and a line here. */
export const SOURCES: readonly Source[] = [
  ...THREAD_SOURCES,
  ...STRENGTH_SOURCES,
  ...BOLTING_SOURCES,
  ...UNIT_SOURCES,
  ...ADAPTER_SOURCES,
  ...ORDER_SOURCES,
  ...ASSEMBLY_SOURCES,
  ...TORQUE_RULE_SOURCES,
  ...UNCERTAINTY_SOURCES,
];
