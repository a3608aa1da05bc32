import { showNumber, showTorque } from '@clampwright/core/quantity';
import { checkDeviationPercent } from '@clampwright/core/wrench';
import type { WrenchCare } from '@clampwright/server/contract';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Button } from '../parts/button.tsx';
import { showInstant } from '../parts/dates.ts';
import { Ledger, LedgerRow } from '../parts/ledger.tsx';
import { Notice } from '../parts/notice.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { EmptyState } from '../parts/states.tsx';
import { PictureFigure } from '../plots/picture-figure.tsx';
import { checkChart } from './history/check-chart.ts';

interface ChecksSheetProps {
  readonly care: WrenchCare;
  readonly onAdd: () => void;
}

const SHOWN = 5;

/** Checks before use on a chart of individuals: what stands out is told in words and marked. */
export function ChecksSheet({ care: { checks }, onAdd }: ChecksSheetProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const deviations = checks.map(checkDeviationPercent);
  const chart = checkChart(deviations, language, t('care.deviation'));
  return (
    <Sheet title={t('care.checks')} side={<Button onPress={onAdd}>{t('care.check-add')}</Button>}>
      {checks.length === 0 ? <EmptyState title={t('care.checks-none')} text={t('care.checks-none-text')} /> : null}
      {chart ? (
        <>
          {chart.signals > 0 ? (
            <Notice kind="caution" title={t('care.check-stands-out', { count: chart.signals })} />
          ) : (
            <p>{t('care.check-quiet')}</p>
          )}
          {chart.pictures.map((picture) => (
            <PictureFigure key={picture.title} picture={picture} />
          ))}
        </>
      ) : checks.length > 0 ? (
        <p className="soft">{t('care.check-few')}</p>
      ) : null}
      {checks.length > 0 ? (
        <Ledger label={t('care.checks')}>
          {checks
            .slice(-SHOWN)
            .toReversed()
            .map((check) => (
              <LedgerRow
                key={check.id}
                title={`${showNumber(checkDeviationPercent(check), language, { decimals: 2 })}\u00a0%`}
                facts={[
                  showInstant(check.at, language),
                  `${showTorque(check.indicatedNm, 'N·m', language)} / ${showTorque(check.referenceNm, 'N·m', language)}`,
                  check.checker,
                  check.by,
                ]}
              />
            ))}
        </Ledger>
      ) : null}
    </Sheet>
  );
}
