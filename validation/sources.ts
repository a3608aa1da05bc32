import type { Source } from './check.ts';
import { ADAPTER_SOURCES } from './checks/adapters.ts';
import { ORDER_SOURCES } from './checks/orders.ts';
import { STRENGTH_SOURCES } from './checks/strength.ts';
import { THREAD_SOURCES } from './checks/threads.ts';
import { UNIT_SOURCES } from './checks/units.ts';

/** Every source that we are held to; to add one, add a file of checks and a line here. */
export const SOURCES: readonly Source[] = [
  ...THREAD_SOURCES,
  ...STRENGTH_SOURCES,
  ...UNIT_SOURCES,
  ...ADAPTER_SOURCES,
  ...ORDER_SOURCES,
];
