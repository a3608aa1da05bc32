import { type Remark, remarkSchema, sayRemark } from '@clampwright/core/language';
import { showShare, type Unit } from '@clampwright/core/quantity';
import { VERDICTS } from '@clampwright/core/verdict';
import { z } from 'zod';
import { useLanguage } from '../app/language.ts';
import { VerdictBadge } from '../parts/verdict-badge.tsx';
import { isRecord } from './is-record.ts';
import { MatrixTable } from './matrix-table.tsx';
import { OutputTable } from './output-table.tsx';
import { shownFigure } from './shown-figure.ts';
import { isShare } from './unit-in-name.ts';
import { UnitSelect } from './unit-select.tsx';
import { toShown, type Units, unitOf } from './units.ts';
import { useBenchWords } from './words.ts';

export interface OutputUnits {
  readonly units: Units;
  readonly onUnit: (name: string, unit: Unit) => void;
}

interface OutputsProps extends OutputUnits {
  readonly outputs: unknown;
}

/** What a result gives, under its names. */
export function Outputs({ outputs, ...units }: OutputsProps) {
  const words = useBenchWords();
  const isShown = useIsShown();
  if (!isRecord(outputs)) return null;
  return (
    <dl className="outputs">
      {Object.entries(outputs)
        .filter(([name, value]) => isShown(name, value))
        .map(([name, value]) => (
          <div key={name}>
            <dt>{words.field(name)}</dt>
            <dd>
              <Output name={name} value={value} {...units} />
            </dd>
          </div>
        ))}
    </dl>
  );
}

/** Shown in sheets of their own, or drawn. */
const ELSEWHERE: ReadonlySet<string> = new Set([
  'steps',
  'warnings',
  'propagation',
  'monteCarlo',
  'agreement',
  'contributions',
  'shares',
  'curve',
  // the remarks once more, in English
  'notes',
  'workedOut',
  'histogram',
]);

/** Sentences of the registry are English, and stand beside the same as data. */
const SENTENCES: ReadonlySet<string> = new Set(['reasons', 'message']);

function useIsShown(): (name: string, value: unknown) => boolean {
  const language = useLanguage();
  return (name, value) => {
    if (ELSEWHERE.has(name) || (Array.isArray(value) && value.length === 0)) return false;
    return !SENTENCES.has(name) || language === 'en';
  };
}

interface OutputProps extends OutputUnits {
  readonly name: string;
  readonly value: unknown;
}

function Output({ name, value, ...units }: OutputProps) {
  const label = useBenchWords().field(name);
  if (name === 'verdict') {
    const verdict = VERDICTS.find((one) => one === value);
    if (verdict) return <VerdictBadge verdict={verdict} />;
  }
  if (isRecord(value)) return <Outputs outputs={value} {...units} />;
  if (!Array.isArray(value)) return <Single name={name} value={value} {...units} />;
  if (value.every((item) => typeof item === 'number')) return <Figures name={name} values={value} {...units} />;
  if (value.every((item) => Array.isArray(item))) return <MatrixTable name={name} rows={value} units={units.units} />;
  const remarks = z.array(remarkSchema).safeParse(value);
  if (remarks.success) return <Remarks remarks={remarks.data} />;
  if (value.every(isRecord)) return <OutputTable label={label} rows={value} units={units.units} />;
  return (
    <ul lang="en">
      {value.map((item: unknown, index) => (
        <li key={index}>{String(item)}</li>
      ))}
    </ul>
  );
}

function Remarks({ remarks }: { readonly remarks: readonly Remark[] }) {
  const language = useLanguage();
  return (
    <ul className="remarks">
      {remarks.map((remark) => (
        <li key={remark.code}>{sayRemark(remark, language)}</li>
      ))}
    </ul>
  );
}

/** A sequence of numbers; an interval where they carry a unit. */
function Figures({
  name,
  values,
  ...units
}: OutputUnits & { readonly name: string; readonly values: readonly number[] }) {
  const words = useBenchWords();
  const language = useLanguage();
  const unit = unitOf(name, units.units);
  if (unit === undefined) return <Sequence values={values} />;
  return (
    <span className="output-interval">
      {values
        .map((value) => shownFigure(toShown(value, name, units.units), language))
        .join(values.length > 2 ? '; ' : ' – ')}
      <span className="output-unit">
        {' '}
        <UnitSelect
          name={name}
          label={words.field(name)}
          unit={unit}
          onChange={(chosen) => units.onUnit(name, chosen)}
        />
      </span>
    </span>
  );
}

/** Whole numbers are an order; others are told apart by more than a space. */
function Sequence({ values }: { readonly values: readonly number[] }) {
  const language = useLanguage();
  if (values.every(Number.isInteger)) return <span className="output-sequence">{values.join(' ')}</span>;
  return <span className="output-sequence">{values.map((value) => shownFigure(value, language)).join('; ')}</span>;
}

function Single({ name, value, units, onUnit }: OutputProps) {
  const words = useBenchWords();
  const language = useLanguage();
  if (typeof value === 'number') {
    return (
      <span className="output-figure">
        {isShare(name) ? showShare(value, language) : shownFigure(toShown(value, name, units), language)}
        <span className="output-unit">
          {' '}
          <UnitSelect
            name={name}
            label={words.field(name)}
            unit={unitOf(name, units)}
            onChange={(chosen) => onUnit(name, chosen)}
          />
        </span>
      </span>
    );
  }
  return typeof value === 'string' ? words.value(value) : words.value(value === true ? 'yes' : 'no');
}
