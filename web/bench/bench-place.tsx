import { CALCULATIONS } from '@clampwright/core/calculations';
import { Link } from '@tanstack/react-router';
import { useTranslation } from 'react-i18next';
import { Ledger, LedgerRow } from '../parts/ledger.tsx';
import { PageHeader } from '../parts/page-header.tsx';

/** Every calculation; each is worked out in this browser. */
export default function BenchPlace() {
  const { t } = useTranslation('lead');
  return (
    <>
      <PageHeader title={t('bench.title')} text={t('bench.text')} />
      <Ledger label={t('bench.title')}>
        {CALCULATIONS.map(({ name }) => (
          <LedgerRow
            key={name}
            title={
              <Link to="/bench/$name" params={{ name }}>
                {t(`bench.calc.${name}.name`)}
              </Link>
            }
            facts={[t(`bench.calc.${name}.title`)]}
          />
        ))}
      </Ledger>
    </>
  );
}
