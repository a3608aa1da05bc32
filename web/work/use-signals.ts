import { sayVerdict } from '@clampwright/core/language';
import { useEffect, useEffectEvent, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import type { LastPull } from './last-pull.ts';
import { chooseSignals, chosenSignals, openSound, type Signals, signal } from './signals.ts';

interface UsedSignals {
  readonly chosen: Signals;
  readonly choose: (signals: Signals) => void;
}

/** Repeats each new verdict in the chosen ways; the one that stands when the screen is opened is not repeated. */
export function useSignals(last: LastPull | undefined): UsedSignals {
  const { t } = useTranslation();
  const language = useLanguage();
  const [chosen, setChosen] = useState(chosenSignals);
  const [firstSeq] = useState(last?.seq ?? 0);
  const seq = last?.seq ?? 0;
  const repeat = useEffectEvent(() => {
    if (!last || last.seq <= firstSeq) return;
    const { verdict } = last.judgement;
    const spoken = t('work.spoken', { position: last.position, verdict: sayVerdict(verdict, language) });
    signal(verdict, chosen, spoken, language);
  });
  useEffect(() => {
    if (seq > 0) repeat();
  }, [seq]);
  return {
    chosen,
    choose: (signals) => {
      if (signals.sound) openSound();
      chooseSignals(signals);
      setChosen(signals);
    },
  };
}
