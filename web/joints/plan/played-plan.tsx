import type { Layout } from '@clampwright/core/layout';
import { showNumber } from '@clampwright/core/quantity';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { JointDrawing } from '../../parts/joint-drawing.tsx';
import { TitleBlock } from '../../parts/title-block.tsx';
import { ForceBars } from './force-bars.tsx';
import type { PlayedPlan } from './play-plan.ts';

interface PlayedPlanProps {
  readonly name: string;
  readonly layout: Layout;
  readonly plan: PlayedPlan;
  readonly finalN: number;
  /** Pulls shown; 0 before the first. */
  readonly at: number;
}

/** One plan after so many pulls: the joint from the tool side, the force of each bolt, and what it comes to. */
export function PlayedPlanPicture({ name, layout, plan, finalN, at }: PlayedPlanProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const step = at === 0 ? undefined : plan.steps[Math.min(at, plan.steps.length) - 1];
  const forcesN = step?.forcesN ?? plan.finalN.map(() => 0);
  const pulled = at > plan.steps.length ? [] : (step?.positions ?? []);
  const show = (forceN: number) => showNumber(forceN / 1000, language, { significant: 3 });
  const words = forcesN.map((forceN, index) => t('plan.force-of', { position: index + 1, force: show(forceN) }));
  return (
    <section className="played-plan" aria-label={name}>
      <h3 className="sheet-subtitle">{name}</h3>
      <JointDrawing
        layout={layout}
        label={t('plan.forces', { name, forces: words.join(', ') })}
        look={(position) => ({
          isNext: pulled.includes(position),
          force: { share: (forcesN[position - 1] ?? 0) / finalN, text: show(forcesN[position - 1] ?? 0) },
          name: words[position - 1] ?? '',
        })}
      />
      <ForceBars label={t('plan.bars', { name })} forcesN={forcesN} finalN={finalN} pulled={pulled} show={show} />
      <PlanFigures plan={plan} />
    </section>
  );
}

function PlanFigures({ plan: { figures } }: { readonly plan: PlayedPlan }) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const show = (value: number, significant = 3) => showNumber(value, language, { significant });
  return (
    <TitleBlock
      cells={[
        { label: t('plan.spread'), value: `${show(figures.spread * 100, 2)}\u00a0%` },
        { label: t('plan.pulls'), value: String(figures.pulls) },
        { label: t('plan.minutes'), value: show(figures.minutes) },
        { label: t('plan.moment'), value: `${show(figures.momentNm)}\u00a0N·m` },
        ...(figures.gapMm === undefined ? [] : [{ label: t('plan.gap'), value: `${show(figures.gapMm, 2)}\u00a0mm` }]),
      ]}
    />
  );
}
