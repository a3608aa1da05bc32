import { capabilityPicture, controlChartPicture } from '@clampwright/core/picture';
import { showNumber } from '@clampwright/core/quantity';
import { capabilityStudy, controlChart } from '@clampwright/core/statistics';
import type { JointPulls as Told } from '@clampwright/server/contract';
import { queryOptions, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { get, having } from '../../app/api.ts';
import { useLanguage } from '../../app/language.ts';
import { Warnings } from '../../bench/warnings.tsx';
import { Notice } from '../../parts/notice.tsx';
import { Select } from '../../parts/select.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import { Loading, Trouble } from '../../parts/states.tsx';
import { TitleBlock } from '../../parts/title-block.tsx';
import { PictureFigure } from '../../plots/picture-figure.tsx';

type PullsAt = Told['steps'][number];

/** Fewer than this and nothing is said of how a joint is pulled. */
const LEAST = 5;

const pullsQuery = (jointId: string, revision: number) =>
  queryOptions({
    queryKey: ['joints', jointId, 'pulls', revision],
    queryFn: ({ signal }) =>
      get(`/joints/${jointId}/revisions/${revision}/pulls`, having<Told>('steps', 'jobs'), signal),
  });

const keyOf = ({ stage, round }: PullsAt) => `${stage}/${round}`;

/** What was pulled on a revision so far: how well it keeps inside its limits, and whether it stays as it is. */
export function JointPulls({ jointId, revision }: { readonly jointId: string; readonly revision: number }) {
  const { t } = useTranslation('lead');
  const told = useQuery(pullsQuery(jointId, revision));
  const [chosen, setChosen] = useState<string>();
  if (told.isPending) return <Loading />;
  if (told.isError) return <Trouble error={told.error} onRetry={() => void told.refetch()} />;
  const steps = told.data.steps.filter(({ values }) => values.length >= LEAST);
  const step = steps.find((one) => keyOf(one) === chosen) ?? steps.at(-1);
  return (
    <Sheet title={t('joint-pulls.title')}>
      <p className="soft">{t('joint-pulls.about')}</p>
      {step ? (
        <>
          <Select
            label={t('joint-pulls.step')}
            value={keyOf(step)}
            options={steps.map((one) => ({
              value: keyOf(one),
              label: t('joint-pulls.step-said', {
                stage: one.stage,
                round: one.round,
                quantity: t(`joint-pulls.${one.quantity}`),
                count: one.values.length,
              }),
            }))}
            onChange={setChosen}
          />
          <StepPulls step={step} />
        </>
      ) : (
        <p>{t('joint-pulls.few', { least: LEAST })}</p>
      )}
    </Sheet>
  );
}

function StepPulls({ step: { values, lower, upper, quantity } }: { readonly step: PullsAt }) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const figure = (value: number) => showNumber(Number(value.toPrecision(4)), language);
  const limits = { ...(lower === undefined ? {} : { lower }), ...(upper === undefined ? {} : { upper }) };
  const study = capabilityStudy({ values, ...limits });
  const chart = controlChart(values);
  const label = t(`joint-pulls.${quantity}`);
  const signals = new Set(chart.signals.map(({ last }) => last)).size;
  const pictures = [
    ...(study.ok ? capabilityPicture(limits, study.value, { language }, label) : []),
    ...controlChartPicture({ values }, chart, { language }, label),
  ];
  return (
    <>
      {study.ok ? (
        <>
          <TitleBlock
            cells={[
              { label: t('bench.field.mean'), value: figure(study.value.mean) },
              { label: t('bench.field.sd'), value: figure(study.value.sd) },
              ...(study.value.cp === undefined ? [] : [{ label: 'Cp', value: figure(study.value.cp) }]),
              { label: 'Cpk', value: figure(study.value.cpk) },
              { label: t('bench.field.cpkLower95'), value: figure(study.value.cpkLower95) },
              { label: t('joint-pulls.normality'), value: `p = ${figure(study.value.normality.p)}` },
            ]}
          />
          <Warnings output={study.value} />
        </>
      ) : (
        <p>{t('joint-pulls.no-limits')}</p>
      )}
      {signals > 0 ? <Notice kind="caution" title={t('joint-pulls.signals', { count: signals })} /> : null}
      {pictures.map((picture) => (
        <PictureFigure key={picture.title} picture={picture} />
      ))}
    </>
  );
}
