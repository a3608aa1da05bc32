import type { JointContent, Neighbours } from '@clampwright/core/joint';
import { orderPlanStands } from '@clampwright/core/joint';
import { type Layout, positionsInOrder } from '@clampwright/core/layout';
import type { Stage } from '@clampwright/core/procedure';
import { useMemo, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { FaultsProvider } from '../../forms/faults.tsx';
import { readerIn } from '../../forms/reader.ts';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import { asTyped } from '../form/as-typed.ts';
import type { JointForm } from '../form/joint-form.ts';
import type { JointReading } from '../form/read.ts';
import { withPlan } from './fill-plan.ts';
import { PlanFields } from './plan-fields.tsx';
import { BLANK_PLAN, type PlanForm, readClosing, readPlan, usualForceKN } from './plan-form.ts';
import { PlansBeside } from './plans-beside.tsx';
import { playStar, playWanted } from './play-plan.ts';
import { useScatter } from './use-scatter.ts';

interface PlanPartProps {
  readonly form: JointForm;
  readonly reading: JointReading;
  readonly onFill: (form: JointForm) => void;
}

/** Rounds planned with the neighbours, compared with plain ones, and taken over into a stage. */
export function PlanPart({ form, reading, onFill }: PlanPartProps) {
  const { t } = useTranslation('lead');
  const { layout, neighbours, stages } = reading;
  const planned = firstTorqueStage(stages);
  if (!form.neighbours.isUsed) return null;
  const isKnown = layout && neighbours && planned >= 0;
  return (
    <Sheet title={t('plan.title')} anchor="plan">
      <PlanState form={form} stages={reading.content?.stages} onFill={onFill} />
      {isKnown ? (
        <PlanDesk form={form} reading={reading} known={{ layout, neighbours }} onFill={onFill} />
      ) : (
        <p className="soft">{t('plan.waits')}</p>
      )}
    </Sheet>
  );
}

const isPlannable = (stage: Stage | undefined): boolean => stage?.torque !== undefined && stage.angle === undefined;

/** The last stage of torque alone, from 0; -1 where there is none. */
const firstTorqueStage = (stages: readonly (Stage | undefined)[]): number => stages.findLastIndex(isPlannable);

interface PlanStateProps {
  readonly form: JointForm;
  readonly stages: JointContent['stages'] | undefined;
  readonly onFill: (form: JointForm) => void;
}

/** Whether the rounds are those of the plan that is kept. */
function PlanState({ form, stages, onFill }: PlanStateProps) {
  const { t } = useTranslation('lead');
  const { plan } = form.neighbours;
  if (!plan) return null;
  const stands = stages === undefined || orderPlanStands(plan, stages);
  return (
    <Notice kind="plain" title={t(stands ? 'plan.taken' : 'plan.changed', { stage: plan.stage })}>
      <Button kind="quiet" onPress={() => onFill({ ...form, neighbours: { ...form.neighbours, plan: undefined } })}>
        {t('plan.drop')}
      </Button>
    </Notice>
  );
}

interface PlanDeskProps extends PlanPartProps {
  readonly known: { readonly layout: Layout; readonly neighbours: Neighbours };
}

function PlanDesk({ form, reading, known, onFill }: PlanDeskProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const [typed, setTyped] = useState<Partial<PlanForm>>({});
  const [isAskedFor, setAskedFor] = useState(false);
  const plan = { ...begun(form, reading, known.layout, (value) => asTyped(value, language)), ...typed };
  const { wanted, closing, faults } = useMemo(() => {
    const reader = readerIn(language);
    const read = { wanted: readPlan(plan, known, reader), closing: readClosing(plan, reader) };
    return { ...read, faults: reader.faults };
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- the plan is told by its texts
  }, [JSON.stringify(plan), known.layout, JSON.stringify(known.neighbours), language]);
  const mine = useMemo(() => wanted && playWanted(wanted), [wanted]);
  const star = useMemo(() => wanted && playStar(wanted), [wanted]);
  const scatter = useScatter(wanted, mine?.ok ? mine.value : undefined);
  const take = () => {
    setAskedFor(true);
    if (!wanted || !closing || !mine?.ok || !star?.ok) return;
    const spread95 = scatter?.find((one) => one.plan === 'planned')?.spread95;
    onFill(
      withPlan(
        form,
        { stage: plan.stage, wanted, planned: mine.value, compared: star.value, closing, spread95 },
        language,
      ),
    );
  };
  return (
    <FaultsProvider faults={faults} isAskedFor={isAskedFor}>
      <PlanFields
        plan={plan}
        layout={known.layout}
        stages={reading.stages}
        torqueUnit={form.torqueUnit}
        wanted={wanted}
        onChange={(part) => setTyped((before) => ({ ...before, ...part }))}
      />
      <PlansBeside wanted={wanted} mine={mine} star={star} scatter={scatter} />
      <Button kind="primary" isDisabled={!mine?.ok} onPress={take}>
        {t('plan.take', { stage: plan.stage })}
      </Button>
    </FaultsProvider>
  );
}

/** What a plan begins with: the last torque stage, its own order, the force that K = 0.2 gives, or the kept plan. */
function begun(
  form: JointForm,
  { stages, fastener }: JointReading,
  layout: Layout,
  show: (value: number) => string,
): PlanForm {
  const kept = form.neighbours.plan;
  const at = kept && isPlannable(stages[kept.stage - 1]) ? kept.stage - 1 : firstTorqueStage(stages);
  const stage = stages[at];
  const order = stage?.rounds[0] && positionsInOrder(layout, stage.rounds[0].order);
  const usualKN = stage?.torque && fastener ? usualForceKN(stage.torque.targetNm, fastener) : undefined;
  const preloadN = form.numbersSource.kind === 'derived' ? form.numbersSource.derivation?.output.preloadN : undefined;
  const finalN = kept?.finalN ?? preloadN;
  const finalKN = finalN === undefined ? usualKN : finalN / 1000;
  return {
    ...BLANK_PLAN,
    stage: at + 1,
    own: order?.ok ? order.value : [],
    finalKN: finalKN === undefined ? '' : show(Number(finalKN.toPrecision(3))),
    ...(kept
      ? {
          method: 'own' as const,
          wrenches: kept.wrenches,
          rounds: show(kept.rounds.length),
          scatterPercent: kept.frictionScatter === undefined ? '' : show(kept.frictionScatter * 100),
        }
      : {}),
  };
}
