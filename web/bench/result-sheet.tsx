import type { Result } from '@clampwright/core/failure';
import { showNumber } from '@clampwright/core/quantity';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Sheet } from '../parts/sheet.tsx';
import { isRecord } from './is-record.ts';
import { unitInName } from './unit-in-name.ts';
import { useBenchWords } from './words.ts';

/** The result as it stands; undefined while an input cannot be read. */
export function ResultSheet({ result }: { readonly result: Result<unknown> | undefined }) {
  const { t } = useTranslation('lead');
  const isThere = result?.ok === true && isRecord(result.value);
  return (
    <Sheet title={t('bench.result')}>
      <div aria-live="polite">
        {isThere ? <Outputs outputs={result.value} /> : <p className="soft">{t('bench.waits')}</p>}
      </div>
    </Sheet>
  );
}

function Outputs({ outputs }: { readonly outputs: unknown }) {
  const words = useBenchWords();
  if (!isRecord(outputs)) return null;
  return (
    <dl className="outputs">
      {Object.entries(outputs).map(([name, value]) => (
        <div key={name}>
          <dt>{words.field(name)}</dt>
          <dd>
            <Output name={name} value={value} />
          </dd>
        </div>
      ))}
    </dl>
  );
}

/** Digits that mean something; what is copied carries all of them. */
const DIGITS = { significant: 6 } as const;

function Output({ name, value }: { readonly name: string; readonly value: unknown }) {
  const language = useLanguage();
  const words = useBenchWords();
  if (typeof value === 'number') {
    const shown = Number.isInteger(value) ? showNumber(value, language) : showNumber(value, language, DIGITS);
    const unit = unitInName(name);
    return (
      <span className="output-figure">
        {shown}
        {unit ? <span className="output-unit"> {unit}</span> : null}
      </span>
    );
  }
  if (typeof value === 'string') return words.value(value);
  if (typeof value === 'boolean') return words.value(value ? 'yes' : 'no');
  if (!Array.isArray(value)) return isRecord(value) ? <Outputs outputs={value} /> : null;
  if (value.every((item) => typeof item === 'number')) return <span className="sequence">{value.join(' ')}</span>;
  return (
    <ul>
      {value.map((item: unknown, index) => (
        <li key={index}>
          <Output name="" value={item} />
        </li>
      ))}
    </ul>
  );
}
