import type { Wrench } from '@clampwright/core/wrench';
import type { LiveReading } from '@clampwright/server/contract';
import { useQuery } from '@tanstack/react-query';
import { useTranslation } from 'react-i18next';
import { useWho } from '../../../app/who.tsx';
import { devicesQuery } from '../../../devices/devices.ts';
import { Notice } from '../../../parts/notice.tsx';
import { Select } from '../../../parts/select.tsx';
import { PluggedPort } from '../../../work/plugged-port.tsx';
import { keyOf, type Side, type Source, sourcesFor, streamOf } from './sources.ts';
import { useLiveReadings } from './use-live-readings.ts';

interface LiveSideProps {
  readonly side: Side;
  readonly wrench: Wrench;
  readonly source: Source;
  readonly onChoose: (source: Source) => void;
  readonly onReading: (reading: Pick<LiveReading, 'torqueNm' | 'from'>) => void;
}

/** Chooses where the figures of one side come from, and listens there. */
export function LiveSide({ side, wrench, source, onChoose, onReading }: LiveSideProps) {
  const { t } = useTranslation('lead');
  const who = useWho();
  const { data: shown = [] } = useQuery(devicesQuery);
  const listening = useLiveReadings(streamOf(source), onReading);
  const sources = sourcesFor(
    side,
    wrench,
    shown.map(({ device }) => device),
  );
  const choose = async (key: string) => {
    const chosen = sources.find((one) => keyOf(one) === key) ?? { kind: 'hand' };
    // What a wrench tells no longer goes to the job that it is taken for: the server wants to know who says so.
    if (streamOf(chosen) === undefined || (await who.ask())) onChoose(chosen);
  };
  const words = (one: Source) => {
    switch (one.kind) {
      case 'hand':
        return t('care.live-hand');
      case 'plugged':
        return t('care.live-plugged');
      case 'wrench':
        return t('care.live-wrench', { name: wrench.name });
      case 'device':
        return one.name;
    }
  };
  return (
    <div className="calibrate-side">
      <Select
        size="wide"
        label={t(side === 'indicated' ? 'care.live-indicated' : 'care.live-reference')}
        value={keyOf(source)}
        options={sources.map((one) => ({ value: keyOf(one), label: words(one) }))}
        onChange={(key) => void choose(key)}
      />
      {listening === 'not' ? null : (
        <Notice
          kind={listening === 'open' || listening === 'opening' ? 'plain' : 'alarm'}
          title={t(`care.live-${listening}`)}
          isLive
        >
          {source.kind === 'wrench' ? <p>{t('care.live-takes')}</p> : null}
        </Notice>
      )}
      {source.kind === 'plugged' ? (
        <PluggedPort
          goesTo={t(side === 'indicated' ? 'care.live-to-indicated' : 'care.live-to-reference')}
          onPull={({ torque, from }) => onReading({ torqueNm: torque.value, from: [...from] })}
        />
      ) : null}
    </div>
  );
}
