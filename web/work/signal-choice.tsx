import { useTranslation } from 'react-i18next';
import { Tick } from '../parts/tick.tsx';
import { SIGNALS, type Signals } from './signals.ts';

interface SignalChoiceProps {
  readonly signals: Signals;
  readonly onChange: (signals: Signals) => void;
}

/** How a verdict is repeated at this device. */
export function SignalChoice({ signals, onChange }: SignalChoiceProps) {
  const { t } = useTranslation();
  return (
    <fieldset className="signal-choice">
      <legend className="soft small">{t('signal.title')}</legend>
      {SIGNALS.map((each) => (
        <Tick key={each} isChosen={signals[each]} onChange={(isOn) => onChange({ ...signals, [each]: isOn })}>
          {t(`signal.${each}`)}
        </Tick>
      ))}
    </fieldset>
  );
}
