import { sayFailure } from '@clampwright/core/language';
import type { Layout } from '@clampwright/core/layout';
import type { Stage } from '@clampwright/core/procedure';
import { showNumber, showTorque, type TorqueUnit } from '@clampwright/core/quantity';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { FormFigure, FormText, PlaceProblems } from '../../forms/fields.tsx';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { Progress } from '../../parts/progress.tsx';
import { Select } from '../../parts/select.tsx';
import { methodsIn, type PlanForm, type PlanWanted, TARGET_KINDS } from './plan-form.ts';
import { useOrderSearch } from './use-order-search.ts';

interface PlanFieldsProps {
  readonly plan: PlanForm;
  readonly layout: Layout;
  readonly stages: readonly (Stage | undefined)[];
  readonly torqueUnit: TorqueUnit;
  readonly wanted: PlanWanted | undefined;
  readonly onChange: (part: Partial<PlanForm>) => void;
}

/** The choices of a plan. */
export function PlanFields(props: PlanFieldsProps) {
  const { plan, layout, stages, torqueUnit, onChange } = props;
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const figure = (name: 'secondsPerPull' | 'closingRounds' | 'stillDeg' | 'finalKN') => ({
    field: `plan.${name}`,
    value: plan[name],
    onChange: (text: string) => onChange({ [name]: text }),
  });
  return (
    <>
      <div className="field-row">
        <Select
          label={t('plan.stage')}
          value={String(plan.stage)}
          options={stages.flatMap((stage, index) =>
            stage?.torque && !stage.angle
              ? [
                  {
                    value: String(index + 1),
                    label: t('plan.stage-option', {
                      number: index + 1,
                      torque: showTorque(stage.torque.targetNm, torqueUnit, language),
                    }),
                  },
                ]
              : [],
          )}
          onChange={(stage) => onChange({ stage: Number(stage) })}
        />
        <FormFigure {...figure('finalKN')} label={t('plan.final')} hint={t('plan.final-hint')} unit="kN" />
        <Select
          label={t('plan.order')}
          value={methodsIn(layout).includes(plan.method) ? plan.method : 'star'}
          options={methodsIn(layout)
            .filter((value) => value !== 'searched' || plan.searched.length > 0)
            .map((value) => ({ value, label: t(`plan.orders.${value}`) }))}
          onChange={(method) => onChange({ method })}
        />
        <Select
          size="narrow"
          label={t('plan.wrenches')}
          hint={t('plan.wrenches-hint')}
          value={String(plan.wrenches)}
          options={['1', '2', '3', '4'].map((value) => ({ value, label: value }))}
          onChange={(wrenches) => onChange(withWrenches(plan, Number(wrenches)))}
        />
      </div>
      {plan.wrenches > 1 ? <Notice kind="plain" title={t('plan.together', { wrenches: plan.wrenches })} /> : null}
      <PlaceProblems place="plan.order" />
      <TargetFields {...props} />
      <div className="field-row">
        <FormFigure {...figure('closingRounds')} label={t('plan.closing')} hint={t('plan.closing-hint')} />
        <FormFigure {...figure('stillDeg')} label={t('round.still')} unit="°" />
        <FormFigure {...figure('secondsPerPull')} label={t('plan.seconds')} unit="s" />
      </div>
    </>
  );
}

/** An order made for one wrench says nothing of several: they begin with the grouped star. */
const withWrenches = ({ method }: PlanForm, wrenches: number): Partial<PlanForm> => ({
  wrenches,
  ...(wrenches > 1 && (method === 'own' || method === 'searched') ? { method: 'star' as const } : {}),
});

function TargetFields(props: PlanFieldsProps) {
  const { plan, onChange } = props;
  const { t } = useTranslation('lead');
  return (
    <>
      <div className="field-row">
        <Select
          label={t('plan.targets')}
          value={plan.targets}
          options={TARGET_KINDS.map((value) => ({ value, label: t(`plan.target.${value}`) }))}
          onChange={(chosen) => onChange({ targets: chosen })}
        />
        {plan.targets === 'planned' ? (
          <>
            <FormFigure
              field="plan.rounds"
              label={t('plan.rounds')}
              value={plan.rounds}
              onChange={(rounds) => onChange({ rounds })}
            />
            <FormFigure
              field="plan.ceilingPercent"
              label={t('plan.ceiling')}
              hint={t('plan.ceiling-hint')}
              unit="%"
              value={plan.ceilingPercent}
              onChange={(ceilingPercent) => onChange({ ceilingPercent })}
            />
            <FormFigure
              field="plan.seatingPercent"
              label={t('plan.seating')}
              hint={t('plan.seating-hint')}
              unit="%"
              value={plan.seatingPercent}
              onChange={(seatingPercent) => onChange({ seatingPercent })}
            />
            <FormFigure
              field="plan.scatterPercent"
              label={t('plan.scatter')}
              hint={t('plan.scatter-hint')}
              unit="± %"
              value={plan.scatterPercent}
              onChange={(scatterPercent) => onChange({ scatterPercent })}
            />
          </>
        ) : (
          <FormText
            field="plan.shares"
            label={t('plan.shares')}
            hint={t('plan.shares-hint')}
            after="%"
            value={plan.shares}
            onChange={(shares) => onChange({ shares })}
          />
        )}
      </div>
      {plan.targets === 'shares' && plan.wrenches === 1 ? <SearchLine {...props} /> : null}
    </>
  );
}

/** Looks for a better order beside the page. */
function SearchLine({ wanted, onChange }: PlanFieldsProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const search = useOrderSearch((order, rounds) => {
    const first = wanted?.shares[0] ?? 1;
    onChange({ method: 'searched', searched: order, shares: risingShares(first, rounds).join(' ') });
  });
  const percent = Math.floor(100 * (search.progress?.share ?? 0));
  return (
    <div className="order-search">
      <p className="soft small">{t('plan.search-hint')}</p>
      {search.isRunning ? (
        <>
          <Progress done={percent} total={100} label={t('plan.search')} />
          <p aria-live="polite">
            {search.progress
              ? t('plan.searching', {
                  percent,
                  spread: `${showNumber(search.progress.spread * 100, language, { significant: 2 })}\u00a0%`,
                })
              : null}
          </p>
          <Button onPress={search.stop}>{t('plan.stop')}</Button>
        </>
      ) : (
        <Button isDisabled={!wanted} onPress={() => wanted && search.begin(wanted)}>
          {t('plan.search')}
        </Button>
      )}
      {search.failure ? <Notice kind="alarm" title={sayFailure(search.failure, language)} /> : null}
    </div>
  );
}

/** From the first share evenly to the whole, percent. */
const risingShares = (first: number, rounds: number): readonly number[] =>
  Array.from({ length: rounds }, (_, index) =>
    rounds === 1 ? 100 : Math.round(100 * (first + ((1 - first) * index) / (rounds - 1))),
  );
