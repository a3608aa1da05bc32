import { CALCULATIONS, type CalculationName, SUBJECT_OF, SUBJECTS, type Subject } from '@clampwright/core/calculations';
import { Link } from '@tanstack/react-router';
import { useTranslation } from 'react-i18next';
import { Ledger, LedgerRow } from '../parts/ledger.tsx';
import { PageHeader } from '../parts/page-header.tsx';
import { Sheet } from '../parts/sheet.tsx';
import './bench.css';

/** Every calculation by what it is about; each is worked out in this browser. */
export default function BenchPlace() {
  const { t } = useTranslation('lead');
  return (
    <>
      <PageHeader title={t('bench.title')} text={t('bench.text')} />
      <div className="bench-subjects">
        {SUBJECTS.map((subject) => (
          <SubjectSheet key={subject} subject={subject} />
        ))}
      </div>
    </>
  );
}

function SubjectSheet({ subject }: { readonly subject: Subject }) {
  const { t } = useTranslation('lead');
  const title = t(`bench.subject.${subject}`);
  return (
    <Sheet title={title}>
      <Ledger label={title}>
        {CALCULATIONS.filter(({ name }) => SUBJECT_OF[name] === subject).map(({ name }) => (
          <CalculationRow key={name} name={name} />
        ))}
      </Ledger>
    </Sheet>
  );
}

function CalculationRow({ name }: { readonly name: CalculationName }) {
  const { t } = useTranslation('lead');
  return (
    <LedgerRow
      title={
        <Link to="/bench/$name" params={{ name }}>
          {t(`bench.calc.${name}.name`)}
        </Link>
      }
      facts={[t(`bench.calc.${name}.title`)]}
    />
  );
}
