import type { Wrench } from '@clampwright/core/wrench';
import type { LiveReading } from '@clampwright/server/contract';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Notice } from '../../../parts/notice.tsx';
import { Tick } from '../../../parts/tick.tsx';
import { LiveSide } from './live-side.tsx';
import { isComplete, type LiveFigures, type Side, type Source, withReading } from './sources.ts';

interface LiveReadingsProps {
  readonly wrench: Wrench;
  readonly figures: LiveFigures;
  /** @param isWhole everything that is told live has come, and it is to be taken as it is */
  readonly onFigures: (figures: LiveFigures, isWhole: boolean) => void;
}

const BY_HAND: Source = { kind: 'hand' };

/** Readings that a wrench or the reference tells by itself instead of somebody who types them. */
export function LiveReadings({ wrench, figures, onFigures }: LiveReadingsProps) {
  const { t } = useTranslation('lead');
  const [sources, setSources] = useState<Readonly<Record<Side, Source>>>({ indicated: BY_HAND, reference: BY_HAND });
  // Nobody is asked for devices until somebody wants one.
  const [isOpened, setOpened] = useState(false);
  const [isPrompt, setPrompt] = useState(false);
  const [stranger, setStranger] = useState<string>();
  const sides: readonly Side[] = wrench.type === 'I' ? ['indicated', 'reference'] : ['reference'];
  const live = sides.filter((side) => sources[side].kind !== 'hand');
  const hear = (side: Side, reading: Pick<LiveReading, 'torqueNm' | 'from'>) => {
    const next = withReading(figures, side, reading, wrench.serial);
    setStranger(next ? undefined : reading.from.join(', '));
    if (next) onFigures(next, isPrompt && isComplete(next, live));
  };
  return (
    <details className="calibrate-live" onToggle={() => setOpened(true)}>
      <summary>{t('care.live')}</summary>
      <p className="soft">{t('care.live-about')}</p>
      {(isOpened ? sides : []).map((side) => (
        <LiveSide
          key={side}
          side={side}
          wrench={wrench}
          source={sources[side]}
          onChoose={(source) => setSources({ ...sources, [side]: source })}
          onReading={(reading) => hear(side, reading)}
        />
      ))}
      {live.includes('reference') ? (
        <Tick isChosen={isPrompt} onChange={setPrompt}>
          {t('care.live-prompt')}
        </Tick>
      ) : null}
      {stranger === undefined ? null : (
        <Notice kind="alarm" title={t('care.live-other', { from: stranger, serial: wrench.serial })} isLive />
      )}
    </details>
  );
}
