import type { Wrench } from '@clampwright/core/wrench';
import { useTranslation } from 'react-i18next';
import { Notice } from '../parts/notice.tsx';
import type { LiveWrench } from './live.ts';

interface ConnectedWrenchProps {
  readonly wrench: Wrench;
  /** Its latest word on the live stream. */
  readonly word: LiveWrench | undefined;
}

/** Says whether the wrench at the port is heard, and where its pulls go. */
export function ConnectedWrench({ wrench, word }: ConnectedWrenchProps) {
  const { t } = useTranslation();
  const { name } = wrench;
  if (word && word.state !== 'connected') {
    return (
      <Notice kind="alarm" title={t(`port.${word.state}`, { name })} isLive>
        <p>{t(`port.${word.state}-do`)}</p>
        {word.detail ? <p className="soft small">{word.detail}</p> : null}
      </Notice>
    );
  }
  return (
    <Notice kind="plain" title={t('port.connected', { name })}>
      <p>{t('port.connected-text')}</p>
    </Notice>
  );
}
