import type { Verification } from '@clampwright/core/record';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { showInstant } from '../parts/dates.ts';
import { Sheet } from '../parts/sheet.tsx';
import { type StateKind, StateWord } from '../parts/state-word.tsx';
import { TextField } from '../parts/text-field.tsx';
import { TitleBlock } from '../parts/title-block.tsx';
import { isSameFingerprint, saidFault } from './said-fault.ts';

interface VerifiedRecordProps {
  readonly fileName: string;
  readonly verification: Verification;
}

/** What came of verifying a record. */
export function VerifiedRecord({ fileName, verification }: VerifiedRecordProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const { title, jobId, entryCount, signedAt, headHash, keyFingerprint } = verification;
  const outcome = outcomeOf(verification);
  return (
    <>
      <section className="verdict-of-record">
        <StateWord kind={KINDS[outcome]}>{t(`verify.${outcome}`)}</StateWord>
        <p>{t(`verify.${outcome}-text`)}</p>
      </section>
      {verification.faults.length > 0 ? <FaultList verification={verification} /> : null}
      <TitleBlock
        cells={[
          { label: t('verify.file'), value: fileName },
          { label: t('verify.job'), value: title },
          { label: t('verify.job-id'), value: jobId },
          { label: t('verify.entries'), value: entryCount },
          { label: t('verify.signed'), value: signedAt && showInstant(signedAt, language) },
          { label: t('verify.head'), value: headHash },
          { label: t('verify.fingerprint'), value: keyFingerprint },
        ]}
      />
      {keyFingerprint ? <Compare fingerprint={keyFingerprint} /> : null}
    </>
  );
}

type RecordOutcome = 'sealed' | 'unsealed' | 'altered';

const KINDS = { sealed: 'good', unsealed: 'open', altered: 'bad' } as const satisfies Record<RecordOutcome, StateKind>;

function outcomeOf({ whole, sealed }: Verification): RecordOutcome {
  if (!whole) return 'altered';
  return sealed ? 'sealed' : 'unsealed';
}

/** More would hide the first behind the many. */
const SHOWN = 50;

function FaultList({ verification }: { readonly verification: Verification }) {
  const { t } = useTranslation('lead');
  const { faults } = verification;
  return (
    <Sheet title={t('verify.faults', { count: faults.length })}>
      <ul className="record-faults">
        {faults.slice(0, SHOWN).map((fault) => {
          const { word, seq, field } = saidFault(fault);
          return (
            <li key={`${fault.part} ${seq} ${field} ${fault.message}`}>
              {t(`verify.fault.${word}`, { seq, field })}
              <span className="exact soft" lang="en">
                {fault.message}
              </span>
            </li>
          );
        })}
      </ul>
      {faults.length > SHOWN ? <p>{t('verify.faults-more', { count: faults.length - SHOWN })}</p> : null}
    </Sheet>
  );
}

/** A seal proves who signed only to somebody who knows the key. */
function Compare({ fingerprint }: { readonly fingerprint: string }) {
  const { t } = useTranslation('lead');
  const [typed, setTyped] = useState('');
  const isSame = isSameFingerprint(typed, fingerprint);
  return (
    <div className="compare">
      <TextField label={t('verify.compare')} hint={t('verify.compare-hint')} value={typed} onChange={setTyped} />
      {typed.trim() === '' ? null : (
        <p aria-live="polite">
          <StateWord kind={isSame ? 'good' : 'bad'}>{isSame ? t('verify.same-key') : t('verify.other-key')}</StateWord>
        </p>
      )}
    </div>
  );
}
