import type { Result } from '@clampwright/core/failure';
import { showNumber } from '@clampwright/core/quantity';
import { VERDICTS } from '@clampwright/core/verdict';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Sheet } from '../parts/sheet.tsx';
import { VerdictBadge } from '../parts/verdict-badge.tsx';
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
  const shown = useShown();
  if (!isRecord(outputs)) return null;
  return (
    <dl className="outputs">
      {Object.entries(outputs)
        .filter(([name, value]) => shown(name, value))
        .map(([name, value]) => (
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

/** Empty lists say nothing, and a picture is not read as figures; sentences of the registry are English, and stand beside the same as data. */
function useShown(): (name: string, value: unknown) => boolean {
  const language = useLanguage();
  return (name, value) => {
    if (name === 'histogram' || (Array.isArray(value) && value.length === 0)) return false;
    return name !== 'reasons' || language === 'en';
  };
}

function Output({ name, value }: { readonly name: string; readonly value: unknown }) {
  if (name === 'verdict') {
    const verdict = VERDICTS.find((one) => one === value);
    if (verdict) return <VerdictBadge verdict={verdict} />;
  }
  if (isRecord(value)) return <Outputs outputs={value} />;
  if (!Array.isArray(value)) return <Single name={name} value={value} />;
  if (value.every((item) => typeof item === 'number')) return <Sequence values={value} unit={unitInName(name)} />;
  if (value.every(isRecord)) return <OutputTable rows={value} />;
  return (
    <ul lang="en">
      {value.map((item: unknown, index) => (
        <li key={index}>{String(item)}</li>
      ))}
    </ul>
  );
}

function Sequence({ values, unit }: { readonly values: readonly number[]; readonly unit: string | undefined }) {
  const figure = useFigure();
  return <span className="sequence">{[...values.map(figure), ...(unit === undefined ? [] : [unit])].join(' ')}</span>;
}

function Single({ name, value }: { readonly name: string; readonly value: unknown }) {
  const words = useBenchWords();
  const figure = useFigure();
  const unit = unitInName(name);
  if (typeof value === 'number') {
    return (
      <span className="output-figure">
        {figure(value)}
        {unit ? <span className="output-unit"> {unit}</span> : null}
      </span>
    );
  }
  return typeof value === 'string' ? words.value(value) : words.value(value === true ? 'yes' : 'no');
}

/** Digits that mean something; what is copied carries all of them. */
const DIGITS = 6;

function useFigure(): (value: number) => string {
  const language = useLanguage();
  return (value) =>
    showNumber(Number(value.toPrecision(Math.max(DIGITS, Math.trunc(value).toString().length))), language);
}

function OutputTable({ rows }: { readonly rows: readonly Readonly<Record<string, unknown>>[] }) {
  const words = useBenchWords();
  const figure = useFigure();
  const names = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const cell = (value: unknown) => {
    if (typeof value === 'number') return figure(value);
    return typeof value === 'string' ? words.value(value) : '–';
  };
  return (
    <div className="table-frame">
      <table className="table">
        <thead>
          <tr>
            {names.map((name) => (
              <th key={name} scope="col">
                {words.field(name)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <tr key={index}>
              {names.map((name) => (
                <td key={name}>{cell(row[name])}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
