import { judgeComparison, type ReferenceStandard } from '@clampwright/core/wrench';
import { useTranslation } from 'react-i18next';
import { Button } from '../../parts/button.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import { JudgedRuns, RefusedReadings } from './judged-runs.tsx';
import type { InSession } from './new-session.ts';
import { comparisonOf } from './session.ts';

/** What was found, and the choice between adjusting and leaving it. */
export function BetweenRuns({
  wrench,
  plan,
  session,
  reference,
  onChange,
}: InSession & { readonly reference: ReferenceStandard }) {
  const { t } = useTranslation('lead');
  const judged = judgeComparison(comparisonOf(plan, session.found, {}), wrench, { reference }, 'asFound');
  const isGood = judged.ok && judged.value.every(({ evaluated }) => evaluated.conforms);
  const undo = () =>
    onChange({ ...session, at: 'found', found: { ...session.found, acts: session.found.acts.slice(0, -1) } });
  const adjust = () => onChange({ ...session, at: 'left', left: { at: new Date().toISOString(), acts: [] } });
  return (
    <Sheet title={t('care.result-found')}>
      {judged.ok ? <JudgedRuns runs={judged.value} /> : <RefusedReadings failure={judged.failure} />}
      <div className="dialog-actions">
        {judged.ok ? (
          <>
            <Button kind={isGood ? 'plain' : 'primary'} size="work" onPress={adjust}>
              {t('care.adjust')}
            </Button>
            <Button
              kind={isGood ? 'primary' : 'plain'}
              size="work"
              onPress={() => onChange({ ...session, at: 'finish' })}
            >
              {t(isGood ? 'care.leave' : 'care.leave-off')}
            </Button>
          </>
        ) : null}
        <Button onPress={undo}>{t('care.undo')}</Button>
      </div>
    </Sheet>
  );
}
