import type { DeviceTest, ShownDevice } from '@clampwright/server/contract';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { usePerson } from '../app/session.ts';
import { useWho } from '../app/who.tsx';
import { Button } from '../parts/button.tsx';
import { ConfirmDialog } from '../parts/confirm-dialog.tsx';
import { Notice } from '../parts/notice.tsx';
import { PageHeader } from '../parts/page-header.tsx';
import { Loading, Trouble } from '../parts/states.tsx';
import { mayKeep } from '../wrenches/may-keep.ts';
import { DeviceDialog } from './device-dialog.tsx';
import { type DeviceActs, DeviceList } from './device-list.tsx';
import { devicesQuery, makeKey, testDevice, useDeviceAct } from './devices.ts';
import { KeyDialog } from './key-dialog.tsx';
import { LineDescriptions } from './line-descriptions.tsx';
import { TestResult } from './test-result.tsx';
import './devices.css';

type Open =
  | { readonly kind: 'change'; readonly shown: ShownDevice | undefined }
  | { readonly kind: 'remove'; readonly shown: ShownDevice }
  | { readonly kind: 'key'; readonly shown: ShownDevice; readonly key: string };

/** What tells pulls by itself, how it stands, and how lines are read. */
export default function DevicesPlace() {
  const { t } = useTranslation('lead');
  const devices = useQuery(devicesQuery);
  const may = mayKeep(usePerson()).register;
  const who = useWho();
  const act = useDeviceAct();
  const [open, setOpen] = useState<Open>();
  const [tested, setTested] = useState<{ readonly shown: ShownDevice; readonly test: DeviceTest }>();
  const [trouble, setTrouble] = useState<Error>();

  const asked = async (work: () => Promise<void>): Promise<void> => {
    setTrouble(undefined);
    try {
      if (await who.ask()) await work();
    } catch (error) {
      setTrouble(error instanceof Error ? error : new Error(String(error)));
    }
  };
  const acts: DeviceActs = {
    onChange: (shown) => setOpen({ kind: 'change', shown }),
    onRemove: (shown) => setOpen({ kind: 'remove', shown }),
    onTest: (shown) => void asked(async () => setTested({ shown, test: await testDevice(shown.device.id) })),
    onKey: (shown) => void asked(async () => setOpen({ kind: 'key', shown, ...(await makeKey(shown.device.id)) })),
    onRevoke: (shown) => void asked(async () => act.mutate({ kind: 'revoke-key', id: shown.device.id })),
  };
  const remove = ({ device }: ShownDevice): void =>
    void asked(async () => act.mutate({ kind: 'remove', id: device.id }, { onSuccess: () => setOpen(undefined) }));

  return (
    <>
      <PageHeader
        above={<Link to="/wrenches">{t('wrenches.title')}</Link>}
        title={t('devices.title')}
        text={t('devices.text')}
      >
        {may ? (
          <Button kind="primary" onPress={() => setOpen({ kind: 'change', shown: undefined })}>
            {t('devices.add')}
          </Button>
        ) : null}
      </PageHeader>
      {may ? null : <Notice kind="plain" title={t('devices.keeper-only')} />}
      {trouble ? <Trouble error={trouble} /> : null}
      {act.isError ? <Trouble error={act.error} /> : null}
      {tested ? <TestResult shown={tested.shown} test={tested.test} onTrusted={() => setTested(undefined)} /> : null}
      {devices.isPending ? <Loading /> : null}
      {devices.isError ? <Trouble error={devices.error} onRetry={() => void devices.refetch()} /> : null}
      {devices.data ? <DeviceList devices={devices.data} acts={may ? acts : undefined} /> : null}
      <LineDescriptions devices={devices.data ?? []} may={may} />
      {open?.kind === 'change' ? <DeviceDialog shown={open.shown} onClose={() => setOpen(undefined)} /> : null}
      {open?.kind === 'key' ? (
        <KeyDialog name={open.shown.device.name} secret={open.key} onClose={() => setOpen(undefined)} />
      ) : null}
      {open?.kind === 'remove' ? (
        <ConfirmDialog
          isGrave
          title={t('devices.remove-named', { name: open.shown.device.name })}
          action={t('devices.remove')}
          onConfirm={() => remove(open.shown)}
          onClose={() => setOpen(undefined)}
        >
          <p>{t('devices.remove-text')}</p>
        </ConfirmDialog>
      ) : null}
    </>
  );
}
