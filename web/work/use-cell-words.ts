import { sayNeed, sayVerdict } from '@clampwright/core/language';
import type { CellState } from '@clampwright/core/record';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';

/** The state of a cell in a word or two: its verdict, the lead's acceptance, or what it waits for. */
export function useCellWords(): (cell: CellState) => string {
  const { t } = useTranslation();
  const language = useLanguage();
  return (cell) => {
    if (cell.acceptedBy) return t('order.accepted');
    return cell.need === 'nothing' ? sayVerdict(cell.verdict ?? 'none', language) : sayNeed(cell.need, language);
  };
}
