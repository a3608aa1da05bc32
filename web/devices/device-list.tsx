import type { ShownDevice } from '@clampwright/server/contract';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Button } from '../parts/button.tsx';
import { showInstant } from '../parts/dates.ts';
import { Ledger, LedgerRow } from '../parts/ledger.tsx';
import { type StateKind, StateWord } from '../parts/state-word.tsx';
import { EmptyState } from '../parts/states.tsx';
import { useFaultWords } from './fault-words.ts';

/** What can be done with a device, where somebody may. */
export interface DeviceActs {
  readonly onChange: (shown: ShownDevice) => void;
  readonly onTest: (shown: ShownDevice) => void;
  readonly onKey: (shown: ShownDevice) => void;
  readonly onRevoke: (shown: ShownDevice) => void;
  readonly onRemove: (shown: ShownDevice) => void;
}

interface DeviceListProps {
  readonly devices: readonly ShownDevice[];
  readonly acts: DeviceActs | undefined;
}

/** The devices with how they stand and what they sent last. */
export function DeviceList({ devices, acts }: DeviceListProps) {
  const { t } = useTranslation('lead');
  if (devices.length === 0) return <EmptyState title={t('devices.none')} text={t('devices.none-text')} />;
  return (
    <Ledger label={t('devices.title')}>
      {devices.map((shown) => (
        <DeviceRow key={shown.device.id} shown={shown} acts={acts} />
      ))}
    </Ledger>
  );
}

const STATES = {
  waiting: 'open',
  connected: 'good',
  lost: 'bad',
  'set-up-wrong': 'bad',
} as const satisfies Record<ShownDevice['standing']['state'], StateKind>;

function DeviceRow({ shown, acts }: { readonly shown: ShownDevice; readonly acts: DeviceActs | undefined }) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const faultWords = useFaultWords();
  const { device, standing, hasKey } = shown;
  const { since, taken, already, refused, unreadable, reconnections, lastSeenAt, lastFault, detail, raw } = standing;
  const last = raw.at(-1);
  return (
    <LedgerRow
      title={device.name}
      state={<StateWord kind={STATES[standing.state]}>{t(`devices.state-${standing.state}`)}</StateWord>}
      facts={[
        t(`devices.kind-${device.way.kind}`),
        ...(device.way.kind === 'http' ? [t(hasKey ? 'devices.key-there' : 'devices.key-none')] : []),
        ...(detail === '' ? [] : [detail]),
        t('devices.counts', { since: showInstant(since, language), taken, already, refused, unreadable }),
        ...(reconnections === 0 ? [] : [t('devices.reconnections', { times: reconnections })]),
        lastSeenAt === null ? t('devices.not-heard') : t('devices.heard', { when: showInstant(lastSeenAt, language) }),
        ...(last === undefined ? [] : [<code key="last">{t('devices.last', { raw: last })}</code>]),
        ...(lastFault === null ? [] : [t('devices.fault', { what: faultWords(lastFault) })]),
      ]}
      side={acts ? <RowActs shown={shown} acts={acts} /> : null}
    />
  );
}

function RowActs({ shown, acts }: { readonly shown: ShownDevice; readonly acts: DeviceActs }) {
  const { t } = useTranslation('lead');
  const { name, way } = shown.device;
  return (
    <span className="device-acts">
      <Button label={t('devices.test-named', { name })} onPress={() => acts.onTest(shown)}>
        {t('devices.test')}
      </Button>
      {way.kind === 'http' ? (
        <Button onPress={() => acts.onKey(shown)}>{t(shown.hasKey ? 'devices.key-new' : 'devices.key-make')}</Button>
      ) : null}
      {shown.hasKey ? <Button onPress={() => acts.onRevoke(shown)}>{t('devices.key-revoke')}</Button> : null}
      <Button label={t('devices.change-named', { name })} onPress={() => acts.onChange(shown)}>
        {t('devices.change')}
      </Button>
      <Button kind="quiet" label={t('devices.remove-named', { name })} onPress={() => acts.onRemove(shown)}>
        {t('devices.remove')}
      </Button>
    </span>
  );
}
