import type { Tool } from '@clampwright/core/wrench';
import type { Toolbox } from '@clampwright/server/contract';

/** Identities of what was chosen; empty for none. */
export interface ToolChoice {
  readonly wrenchId: string;
  readonly adapterId: string;
  readonly extensionId: string;
}

/** The tool of a choice; undefined while no wrench is chosen. */
export function toolOf(choice: ToolChoice, toolbox: Toolbox): Tool | undefined {
  const wrench = toolbox.wrenches.find(({ id }) => id === choice.wrenchId);
  const adapter = toolbox.adapters.find(({ id }) => id === choice.adapterId);
  const extension = toolbox.extensions.find(({ id }) => id === choice.extensionId);
  return wrench && { wrench, ...(adapter ? { adapter } : {}), ...(extension ? { extension } : {}) };
}
