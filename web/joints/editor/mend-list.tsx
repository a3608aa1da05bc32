import { useTranslation } from 'react-i18next';
import type { Fault } from '../../forms/fault.ts';
import { useFaultWords } from '../../forms/fault-words.ts';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { usePlaceWords } from './place-words.ts';

interface MendListProps {
  readonly faults: readonly Fault[];
  readonly onClose?: () => void;
}

/** Everything that hinders the release, each with its place. */
export function MendList({ faults, onClose }: MendListProps) {
  const { t } = useTranslation('lead');
  const words = useFaultWords();
  const place = usePlaceWords();
  return (
    <Notice kind="alarm" title={t('editor.to-mend', { count: faults.length })} isLive>
      <ul className="mend">
        {faults.map((fault) => (
          <li key={`${fault.field} ${words(fault.finding)}`}>
            <strong>{place(fault.field)}</strong> {words(fault.finding)}
          </li>
        ))}
      </ul>
      {onClose ? (
        <Button kind="quiet" onPress={onClose}>
          {t('editor.hide-list')}
        </Button>
      ) : null}
    </Notice>
  );
}
