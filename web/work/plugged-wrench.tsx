import { OWN_LINES, type ToldPull } from '@clampwright/core/line';
import type { CellState } from '@clampwright/core/record';
import { useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { lineDescriptionsQuery } from '../devices/devices.ts';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { Select } from '../parts/select.tsx';
import { newIdentity } from './identity.ts';
import { pluggedPull } from './plugged-pull.ts';
import { usePlugged } from './use-plugged.ts';
import type { PullSender } from './use-pull-sender.ts';
import { webSerial } from './web-serial.ts';

const BAUD_RATES = ['9600', '19200', '38400', '57600', '115200'] as const;

/** The position moves on a moment after the pull before was acknowledged. */
const SETTLE_MS = 60;

interface PluggedWrenchProps {
  readonly cell: CellState;
  readonly wrenchId: string;
  readonly sender: PullSender;
}

interface Heard {
  readonly pull: ToldPull;
  readonly way: 'serial' | 'keyboard';
}

/** A wrench at this very screen: at a port of the tablet, or typing like a keyboard. */
export function PluggedWrench({ cell, wrenchId, sender }: PluggedWrenchProps) {
  const { t } = useTranslation();
  const { data = [OWN_LINES] } = useQuery(lineDescriptionsQuery);
  const [name, setName] = useState(OWN_LINES.name);
  const [baudRate, setBaudRate] = useState<(typeof BAUD_RATES)[number]>('115200');
  const [heard, setHeard] = useState<readonly Heard[]>([]);
  const description = data.find((one) => one.name === name) ?? OWN_LINES;
  const { state, connect, hearKeyboard, end } = usePlugged(description, (pull, way) =>
    setHeard((before) => [...before, { pull, way }]),
  );

  // One pull at a time, each for the position whose turn it is once the one before is recorded.
  const [next] = heard;
  const isFree = sender.sending.kind === 'idle' || sender.sending.kind === 'refused';
  useEffect(() => {
    if (!next || !isFree) return undefined;
    const { pull, way } = next;
    const timer = setTimeout(() => {
      setHeard((before) => before.slice(1));
      sender.send(pluggedPull(pull, { id: newIdentity(), cell, wrenchId, way, nowIso: new Date().toISOString() }));
    }, SETTLE_MS);
    return () => clearTimeout(timer);
  }, [next, isFree, sender, cell, wrenchId]);

  if (state.way !== 'none') {
    return (
      <Notice
        kind={state.isThere ? 'plain' : 'alarm'}
        title={t(state.isThere ? (state.way === 'serial' ? 'plugged.listening' : 'plugged.typing') : 'plugged.lost')}
        isLive
      >
        <p>{t('plugged.listening-text')}</p>
        {state.unreadable > 0 ? (
          <p>{t('plugged.unreadable', { number: state.unreadable, raw: state.raw })}</p>
        ) : state.raw === '' ? null : (
          <p className="soft small">{t('plugged.last', { raw: state.raw })}</p>
        )}
        <Button onPress={end}>{t('plugged.end')}</Button>
      </Notice>
    );
  }
  return (
    <details className="plugged">
      <summary>{t('plugged.title')}</summary>
      <p>{t('plugged.text')}</p>
      {state.refusal === '' ? null : (
        <Notice kind="alarm" title={t('plugged.refused', { why: state.refusal })} isLive />
      )}
      <div className="field-row">
        <Select
          label={t('plugged.lines')}
          value={name}
          options={data.map((one) => ({ value: one.name, label: one.name }))}
          onChange={setName}
        />
        {webSerial() ? (
          <Select
            size="narrow"
            label={t('plugged.baud')}
            value={baudRate}
            options={BAUD_RATES.map((value) => ({ value, label: value }))}
            onChange={setBaudRate}
          />
        ) : null}
      </div>
      {webSerial() ? <Button onPress={() => void connect(Number(baudRate))}>{t('plugged.connect')}</Button> : null}
      <Button onPress={hearKeyboard}>{t('plugged.keyboard')}</Button>
    </details>
  );
}
