import type { LineFault } from '@clampwright/core/line';
import type { ShownDevice } from '@clampwright/server/contract';
import { useTranslation } from 'react-i18next';

const CODES = [
  'too-long',
  'unprintable',
  'no-such-line',
  'check',
  'figure',
  'unit',
  'time',
  'count',
  'identity',
  'serial',
  'absurd',
  'no-result',
  'cut-off',
] as const satisfies readonly LineFault['code'][];

/** What went wrong last, in words. */
export function useFaultWords(): (fault: NonNullable<ShownDevice['standing']['lastFault']>) => string {
  const { t } = useTranslation('lead');
  return (fault) => {
    if (fault.kind !== 'line') return fault.message;
    const code = CODES.find((known) => known === fault.code);
    return code ? t(`line-fault.${code}`, { cell: fault.cell ?? 0 }) : fault.code;
  };
}
