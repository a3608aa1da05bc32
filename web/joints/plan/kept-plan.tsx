import type { JointContent } from '@clampwright/core/joint';
import { orderPlanStands } from '@clampwright/core/joint';
import { say } from '@clampwright/core/language';
import { showNumber } from '@clampwright/core/quantity';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { Notice } from '../../parts/notice.tsx';
import { TitleBlock } from '../../parts/title-block.tsx';

/** Where targets by position come from, to be read. */
export function KeptPlan({ content }: { readonly content: JointContent }) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const { neighbours, stages } = content;
  if (!neighbours?.plan) return null;
  const { plan, how, note } = neighbours;
  const figures = ({ spread, pulls, minutes }: typeof plan.planned) =>
    t('plan.kept-figures', {
      spread: showNumber(spread * 100, language, { significant: 2 }),
      pulls,
      minutes: showNumber(minutes, language, { significant: 2 }),
    });
  return (
    <>
      <Notice kind="caution" title={say(language, 'plan.estimate')}>
        <p>{say(language, 'plan.estimate-text', { stage: plan.stage })}</p>
        {orderPlanStands(plan, stages) ? null : <p>{say(language, 'plan.changed')}</p>}
      </Notice>
      <TitleBlock
        cells={[
          { label: say(language, 'plan.known-by'), value: say(language, `plan.by-${how}`) + (note ? `: ${note}` : '') },
          { label: say(language, 'plan.planned'), value: figures(plan.planned) },
          { label: say(language, 'plan.compared'), value: figures(plan.compared) },
        ]}
      />
    </>
  );
}
