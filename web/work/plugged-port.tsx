import { OWN_LINES, type ToldPull } from '@clampwright/core/line';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { lineDescriptionsQuery } from '../devices/devices.ts';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { Select } from '../parts/select.tsx';
import { usePlugged } from './use-plugged.ts';
import { webSerial } from './web-serial.ts';

const BAUD_RATES = ['9600', '19200', '38400', '57600', '115200'] as const;

interface PluggedPortProps {
  /** Where what it tells goes to. */
  readonly goesTo: string;
  /** The choice of the way is folded away until somebody wants it. */
  readonly isFolded?: boolean;
  readonly onPull: (pull: ToldPull, way: 'serial' | 'keyboard') => void;
}

/** Connects what is at this very screen: at a port of the tablet, or typing like a keyboard. */
export function PluggedPort({ goesTo, isFolded = false, onPull }: PluggedPortProps) {
  const { t } = useTranslation();
  const { data = [OWN_LINES] } = useQuery(lineDescriptionsQuery);
  const [name, setName] = useState(OWN_LINES.name);
  const [baudRate, setBaudRate] = useState<(typeof BAUD_RATES)[number]>('115200');
  const description = data.find((one) => one.name === name) ?? OWN_LINES;
  const { state, connect, hearKeyboard, end } = usePlugged(description, onPull);
  if (state.way !== 'none') {
    return (
      <Notice
        kind={state.isThere ? 'plain' : 'alarm'}
        title={t(state.isThere ? (state.way === 'serial' ? 'plugged.listening' : 'plugged.typing') : 'plugged.lost')}
        isLive
      >
        <p>{goesTo}</p>
        {state.unreadable > 0 ? (
          <p>{t('plugged.unreadable', { number: state.unreadable, raw: state.raw })}</p>
        ) : state.raw === '' ? null : (
          <p className="soft small">{t('plugged.last', { raw: state.raw })}</p>
        )}
        <Button onPress={end}>{t('plugged.end')}</Button>
      </Notice>
    );
  }
  const choice = (
    <>
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
      <div className="dialog-actions">
        {webSerial() ? <Button onPress={() => void connect(Number(baudRate))}>{t('plugged.connect')}</Button> : null}
        <Button onPress={hearKeyboard}>{t('plugged.keyboard')}</Button>
      </div>
    </>
  );
  if (!isFolded) return choice;
  return (
    <details className="plugged">
      <summary>{t('plugged.title')}</summary>
      <p>{t('plugged.text')}</p>
      {choice}
    </details>
  );
}
