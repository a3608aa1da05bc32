import { type Verification, verifyRecord } from '@clampwright/core/record';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { FileDrop } from '../parts/file-drop.tsx';
import { Notice } from '../parts/notice.tsx';
import { PageHeader } from '../parts/page-header.tsx';
import { VerifiedRecord } from './verified-record.tsx';
import './records.css';

interface Verified {
  readonly fileName: string;
  readonly verification: Verification;
}

/** Verifies a record in this browser alone: nothing is sent, no server is asked. */
export default function VerifyPlace() {
  const { t } = useTranslation('lead');
  const [verified, setVerified] = useState<Verified>();
  const [isUnreadable, setUnreadable] = useState(false);
  const verify = async (file: File) => {
    setUnreadable(false);
    setVerified(undefined);
    // A file on a stick that was pulled out, or one that is no text, cannot be read.
    const text = await file.text().catch(() => undefined);
    if (text === undefined) setUnreadable(true);
    else setVerified({ fileName: file.name, verification: verifyRecord(text) });
  };
  return (
    <>
      <PageHeader
        above={<Link to="/records">{t('records.title')}</Link>}
        title={t('verify.title')}
        text={t('verify.text')}
      />
      <FileDrop
        label={t('verify.drop')}
        hint={t('verify.drop-hint')}
        accept=".json,application/json"
        onFile={(file) => void verify(file)}
      />
      <div aria-live="polite">
        {isUnreadable ? <Notice kind="alarm" title={t('verify.unreadable')} /> : null}
        {verified ? <VerifiedRecord fileName={verified.fileName} verification={verified.verification} /> : null}
      </div>
    </>
  );
}
