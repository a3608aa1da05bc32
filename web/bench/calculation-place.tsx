import { CALCULATIONS } from '@clampwright/core/calculations';
import { getRouteApi, Link } from '@tanstack/react-router';
import { useTranslation } from 'react-i18next';
import { NoSuchPlace } from '../app/no-such-place.tsx';
import { PageHeader } from '../parts/page-header.tsx';
import { CalculationSheet } from './calculation-sheet.tsx';
import { Cautions, Sources } from './told.tsx';
import './bench.css';

const route = getRouteApi('/bench/$name');

/** One calculation, with the inputs that the address carries. */
export default function CalculationPlace() {
  const { t } = useTranslation('lead');
  const { name: asked } = route.useParams();
  const { input, units } = route.useSearch();
  const name = CALCULATIONS.map((calculation) => calculation.name).find((known) => known === asked);
  if (!name) return <NoSuchPlace />;
  return (
    <>
      <PageHeader
        above={<Link to="/bench">{t('bench.title')}</Link>}
        title={t(`bench.calc.${name}.name`)}
        text={t(`bench.calc.${name}.title`)}
      />
      <CalculationSheet key={name} name={name} firstInput={input} firstUnits={units} />
      <Cautions name={name} />
      <Sources name={name} />
    </>
  );
}
