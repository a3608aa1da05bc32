import type { Tool } from '@clampwright/core/wrench';

/** Wrench with what is put on it, in one line. */
export const toolName = ({ wrench, adapter, extension }: Tool): string =>
  [wrench.name, adapter?.name, extension?.name].filter((name) => name !== undefined).join(' + ');
