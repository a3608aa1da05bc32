import { judgeCalibration, type ReferenceStandard } from '@clampwright/core/wrench';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { usePerson } from '../../app/session.ts';
import { useWho } from '../../app/who.tsx';
import { Button } from '../../parts/button.tsx';
import { useNow } from '../../parts/now.ts';
import { Sheet } from '../../parts/sheet.tsx';
import { Trouble } from '../../parts/states.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { DueChoice } from '../interval/due-choice.tsx';
import { useCareEntry } from '../use-care-entry.ts';
import { JudgedRuns, RefusedReadings } from './judged-runs.tsx';
import { KeptCalibration } from './kept-calibration.tsx';
import { forgetSession } from './kept-session.ts';
import type { InSession } from './new-session.ts';
import { calibrationOf } from './whole.ts';

/** The whole calibration once more before it is kept for good; then its certificate. */
export function FinishSheet({
  wrench,
  plan,
  session,
  reference,
  onChange,
}: InSession & { readonly reference: ReferenceStandard }) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const who = useWho();
  const person = usePerson();
  const [note, setNote] = useState('');
  const [isKept, setKept] = useState(false);
  const [isDueFit, setDueFit] = useState(true);
  const entry = useCareEntry();
  const today = useNow().toISOString().slice(0, 10);
  const whole = (by: string) => calibrationOf(session, plan, reference, { by, today, language, note });
  const calibration = whole(person?.name ?? '–');
  const judged = calibration && judgeCalibration(calibration, wrench, today);
  const keep = async () => {
    const somebody = await who.ask();
    const kept = somebody && whole(somebody.name);
    if (!kept) return;
    entry.mutate(
      { kind: 'calibration', calibration: kept },
      {
        onSuccess: () => {
          forgetSession(wrench.id);
          setKept(true);
        },
      },
    );
  };
  const back = () => {
    const name = session.left ? 'left' : 'found';
    const run = session[name];
    if (run) onChange({ ...session, at: name, [name]: { ...run, acts: run.acts.slice(0, -1) } });
  };
  if (isKept && calibration && judged?.ok)
    return <KeptCalibration calibration={calibration} isFoundGood={judged.value.isFoundGood} />;
  return (
    <Sheet title={t(session.left ? 'care.result-left' : 'care.result-found')}>
      {judged?.ok ? <JudgedRuns runs={judged.value.left ?? judged.value.found} /> : null}
      {judged && !judged.ok ? <RefusedReadings failure={judged.failure} /> : null}
      {judged?.ok && calibration ? (
        <DueChoice
          wrenchId={wrench.id}
          calibration={calibration}
          due={session.setUp}
          onChange={(due, isFit) => {
            setDueFit(isFit);
            if (isFit) onChange({ ...session, setUp: { ...session.setUp, ...due } });
          }}
        />
      ) : null}
      <TextField isLong label={t('care.note')} value={note} onChange={setNote} />
      {entry.isError ? <Trouble error={entry.error} /> : null}
      <div className="dialog-actions">
        <Button
          kind="primary"
          size="work"
          isDisabled={!judged?.ok || !isDueFit || entry.isPending}
          onPress={() => void keep()}
        >
          {t('care.keep-calibration')}
        </Button>
        <Button onPress={back}>{t('care.undo')}</Button>
        <Button kind="quiet" onPress={() => onChange({ ...session, at: 'set-up' })}>
          {t('care.set-up')}
        </Button>
      </div>
    </Sheet>
  );
}
