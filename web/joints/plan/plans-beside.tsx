import type { Result } from '@clampwright/core/failure';
import { sayFailure } from '@clampwright/core/language';
import { showNumber } from '@clampwright/core/quantity';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { Notice } from '../../parts/notice.tsx';
import type { PlanWanted } from './plan-form.ts';
import type { Scatter } from './plan-messages.ts';
import type { PlayedPlan } from './play-plan.ts';
import { PlayedPlanPicture } from './played-plan.tsx';
import { StepControls } from './step-controls.tsx';
import { useSteps } from './use-steps.ts';

interface PlansBesideProps {
  readonly wanted: PlanWanted | undefined;
  readonly mine: Result<PlayedPlan> | undefined;
  readonly star: Result<PlayedPlan> | undefined;
  readonly scatter: Scatter | undefined;
}

/** The plan beside three star rounds, walked through together, and what scatter makes of it. */
export function PlansBeside({ wanted, mine, star, scatter }: PlansBesideProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const plans = [mine, star].flatMap((plan) => (plan?.ok ? [plan.value] : []));
  const steps = useSteps(Math.max(0, ...plans.map((plan) => plan.steps.length)));
  if (!wanted) return null;
  return (
    <>
      {mine?.ok === false ? (
        <Notice kind="alarm" title={t('plan.refused')}>
          <p>{sayFailure(mine.failure, language)}</p>
        </Notice>
      ) : null}
      <div className="plans-beside">
        {mine?.ok ? (
          <PlayedPlanPicture
            name={t('plan.mine')}
            layout={wanted.layout}
            plan={mine.value}
            finalN={wanted.finalN}
            at={steps.at}
          />
        ) : null}
        {star?.ok ? (
          <PlayedPlanPicture
            name={t('plan.star')}
            layout={wanted.layout}
            plan={star.value}
            finalN={wanted.finalN}
            at={steps.at}
          />
        ) : null}
      </div>
      <p className="soft small">{t('plan.line')}</p>
      {plans[0] ? <GapAssumed wanted={wanted} figures={plans[0].figures} /> : null}
      <StepControls steps={steps} />
      <ScatterTable wanted={wanted} scatter={scatter} />
    </>
  );
}

/** What the gap is taken from, or why it cannot be told. */
function GapAssumed({ wanted, figures }: { readonly wanted: PlanWanted; readonly figures: PlayedPlan['figures'] }) {
  const { t } = useTranslation('lead');
  const told = wanted.neighbours.model?.kind === 'ring' ? t('plan.gap-assumed') : t('plan.gap-bent');
  return <p className="soft small">{figures.whyNoGap ? t(`plan.no-gap.${figures.whyNoGap}`) : told}</p>;
}

const PLAN_WORDS = {
  planned: 'planned',
  plain: 'plain',
  'plain and round the joint': 'plain-round',
} as const satisfies Record<Scatter[number]['plan'], string>;

function ScatterTable({ wanted, scatter }: { readonly wanted: PlanWanted; readonly scatter: Scatter | undefined }) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  if (wanted.frictionScatter === undefined || wanted.targets === 'shares') return null;
  if (!scatter) return <p className="soft">{t('plan.drawing-scatter')}</p>;
  const percent = (share: number) => `${showNumber(share * 100, language, { significant: 2 })}\u00a0%`;
  const [planned, ...plain] = scatter;
  const isUseless = planned !== undefined && plain.some(({ spread95 }) => spread95 <= planned.spread95);
  return (
    <>
      <table className="scatter-table">
        <caption>{t('plan.scatter-title', { percent: showNumber(wanted.frictionScatter * 100, language) })}</caption>
        <thead>
          <tr>
            <th scope="col">{t('plan.spread')}</th>
            <th scope="col">{t('plan.pulls')}</th>
            <th scope="col">{t('plan.scatter-columns.on-paper')}</th>
            <th scope="col">{t('plan.scatter-columns.mean')}</th>
            <th scope="col">{t('plan.scatter-columns.most')}</th>
          </tr>
        </thead>
        <tbody>
          {scatter.map((one) => (
            <tr key={one.plan}>
              <th scope="row">{t(`plan.scatter-plan.${PLAN_WORDS[one.plan]}`)}</th>
              <td>{one.pulls}</td>
              <td>{percent(one.spreadOnPaper)}</td>
              <td>{percent(one.spreadMean)}</td>
              <td>{percent(one.spread95)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {isUseless ? <Notice kind="caution" title={t('plan.useless')} /> : null}
    </>
  );
}
