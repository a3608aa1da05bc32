import type { Source } from './check.ts';
import { ADAPTER_SOURCES } from './checks/adapters.ts';
import { ASSEMBLY_SOURCES } from './checks/assembly.ts';
import { BOLTING_SOURCES } from './checks/bolting.ts';
import { CALIBRATION_SOURCES } from './checks/calibration.ts';
import { DECISION_SOURCES } from './checks/decisions.ts';
import { INTERACTION_SOURCES } from './checks/interaction.ts';
import { JOINT_STIFFNESS_SOURCES } from './checks/joint-stiffness.ts';
import { ORDER_SOURCES } from './checks/orders.ts';
import { SOLID_SOURCES } from './checks/solids.ts';
import { STATISTICS_SOURCES } from './checks/statistics.ts';
import { STRENGTH_SOURCES } from './checks/strength.ts';
import { STRUCTURAL_PRELOAD_SOURCES } from './checks/structural-preload.ts';
import { THREAD_SOURCES } from './checks/threads.ts';
import { TORQUE_RULE_SOURCES } from './checks/torque-rules.ts';
import { TRACE_SOURCES } from './checks/traces.ts';
import { TURN_SOURCES } from './checks/turns.ts';
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
  ...INTERACTION_SOURCES,
  ...SOLID_SOURCES,
  ...JOINT_STIFFNESS_SOURCES,
  ...STRUCTURAL_PRELOAD_SOURCES,
  ...TURN_SOURCES,
  ...TRACE_SOURCES,
  ...ASSEMBLY_SOURCES,
  ...TORQUE_RULE_SOURCES,
  ...UNCERTAINTY_SOURCES,
  ...CALIBRATION_SOURCES,
  ...DECISION_SOURCES,
  ...STATISTICS_SOURCES,
];
