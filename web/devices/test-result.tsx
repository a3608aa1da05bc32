import type { DeviceTest, ShownDevice } from '@clampwright/server/contract';
import { useTranslation } from 'react-i18next';
import { useWho } from '../app/who.tsx';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { useDeviceAct } from './devices.ts';

interface TestResultProps {
  readonly shown: ShownDevice;
  readonly test: DeviceTest;
  readonly onTrusted: () => void;
}

/** How the test of a connection went; a certificate that nobody has trusted yet can be trusted from here. */
export function TestResult({ shown, test, onTrusted }: TestResultProps) {
  const { t } = useTranslation('lead');
  const who = useWho();
  const act = useDeviceAct();
  const { device } = shown;
  const { certificate } = test;
  const trust = async (trustedCertificate: string): Promise<void> => {
    if (device.way.kind !== 'opc-ua' || !(await who.ask())) return;
    const trusting = { ...device, way: { ...device.way, trustedCertificate } };
    act.mutate({ kind: 'save', device: trusting, keepPassword: shown.hasPassword }, { onSuccess: onTrusted });
  };
  return (
    <Notice
      kind={test.works ? 'plain' : 'alarm'}
      title={t(test.works ? 'devices.works' : 'devices.works-not', { name: device.name })}
      isLive
    >
      {test.detail === '' ? null : <p>{test.detail}</p>}
      {certificate === undefined ? null : (
        <>
          <p>{t('devices.trust-text', { fingerprint: certificate.match(/.{4}/g)?.join(' ') ?? certificate })}</p>
          <Button onPress={() => void trust(certificate)}>{t('devices.trust')}</Button>
        </>
      )}
    </Notice>
  );
}
