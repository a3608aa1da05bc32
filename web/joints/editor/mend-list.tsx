import { useEffect, useRef } from 'react';
import { useTranslation } from 'react-i18next';
import type { Fault } from '../../forms/fault.ts';
import { useFaultWords } from '../../forms/fault-words.ts';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { usePlaceWords } from './place-words.ts';
import { inOrderOfParts, partOf } from './places.ts';

interface MendListProps {
  readonly faults: readonly Fault[];
  /** Present in the editor, where the list can be put away and each place is on the page. */
  readonly onClose?: () => void;
}

/** Everything that hinders the release, each with its place. */
export function MendList({ faults, onClose }: MendListProps) {
  const { t } = useTranslation('lead');
  const words = useFaultWords();
  const list = useRef<HTMLDivElement>(null);
  const isOpened = onClose !== undefined;
  useEffect(() => {
    if (isOpened) list.current?.scrollIntoView({ block: 'center' });
  }, [isOpened]);
  return (
    <div ref={list}>
      <Notice kind="alarm" title={t('editor.to-mend', { count: faults.length })} isLive>
        <ul className="mend">
          {inOrderOfParts(faults).map((fault) => (
            <li key={`${fault.field} ${words(fault.finding)}`}>
              <Place field={fault.field} isLink={isOpened} /> {words(fault.finding)}
            </li>
          ))}
        </ul>
        {onClose ? (
          <Button kind="quiet" onPress={onClose}>
            {t('editor.hide-list')}
          </Button>
        ) : null}
      </Notice>
    </div>
  );
}

function Place({ field, isLink }: { readonly field: string; readonly isLink: boolean }) {
  const said = usePlaceWords()(field);
  const part = partOf(field);
  return isLink && part ? <a href={`#${part}`}>{said}</a> : <strong>{said}</strong>;
}
