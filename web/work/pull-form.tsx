import type { Step } from '@clampwright/core/procedure';
import type { TorqueUnit } from '@clampwright/core/quantity';
import type { CellState } from '@clampwright/core/record';
import type { Tool } from '@clampwright/core/wrench';
import { type FormEvent, useEffect, useRef, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Button } from '../parts/button.tsx';
import { DecimalField } from '../parts/decimal-field.tsx';
import { numberFault, torqueFault } from '../parts/figure-fault.ts';
import { useFigureWords } from '../parts/use-figure-words.ts';
import { newIdentity } from './identity.ts';
import { openSound } from './signals.ts';
import { typedPull } from './typed-pull.ts';
import type { PullSender } from './use-pull-sender.ts';

interface PullFormProps {
  readonly cell: CellState;
  readonly step: Step;
  readonly tool: Tool;
  readonly unit: TorqueUnit;
  readonly sender: PullSender;
}

/** A pull typed by hand, as the wrench showed it. Enter records it. */
export function PullForm({ cell, step, tool, unit, sender }: PullFormProps) {
  const { t } = useTranslation();
  const language = useLanguage();
  const wantsAngle = step.angle !== undefined;
  const [torque, setTorque] = useState('');
  const [angle, setAngle] = useState('');
  const [isChecked, setChecked] = useState(false);
  const isClosing = !wantsAngle && step.closing !== undefined;
  const typedAngle = wantsAngle || (isClosing && angle.trim() !== '') ? angle : undefined;
  const form = useRef<HTMLFormElement>(null);
  const attempt = `${cell.ref.stage} ${cell.ref.round} ${cell.ref.position} ${cell.attemptCount}`;
  const [typedFor, setTypedFor] = useState(attempt);
  if (typedFor !== attempt) {
    setTypedFor(attempt);
    setTorque('');
    setAngle('');
    setChecked(false);
  }
  useEffect(() => {
    // The hand that just pressed Enter types the next figure.
    const isInForm = attempt !== '' && form.current?.contains(document.activeElement);
    if (isInForm) form.current?.querySelector('input')?.focus();
  }, [attempt]);
  const words = useFigureWords();
  const submit = (event: FormEvent) => {
    event.preventDefault();
    openSound();
    if (sender.sending.kind === 'sending' || sender.sending.kind === 'waiting') return;
    const pull = typedPull(
      { torque, angle: typedAngle },
      {
        id: newIdentity(),
        cell,
        wrenchId: tool.wrench.id,
        unit,
        language,
        nowIso: new Date().toISOString(),
      },
    );
    setChecked(true);
    if (pull.ok) sender.send(pull.value);
  };
  return (
    <form ref={form} className="pull-form" onSubmit={submit} aria-label={t('pull.typed')}>
      <div className="field-row">
        <DecimalField
          label={t('pull.torque')}
          unit={unit}
          value={torque}
          onChange={(text) => {
            setChecked(false);
            setTorque(text);
          }}
          problem={isChecked ? words(torqueFault(torque, unit, language)) : undefined}
          size="work"
        />
        {wantsAngle || isClosing ? (
          <DecimalField
            label={t(isClosing ? 'pull.turned' : 'pull.angle')}
            hint={isClosing ? t('pull.turned-hint') : undefined}
            unit="°"
            value={angle}
            onChange={(text) => {
              setChecked(false);
              setAngle(text);
            }}
            problem={isChecked && typedAngle !== undefined ? words(numberFault(angle, language)) : undefined}
            size="work"
          />
        ) : null}
        <Button kind="primary" size="work" type="submit" isDisabled={torque === '' || (wantsAngle && angle === '')}>
          {t('pull.record')}
        </Button>
      </div>
    </form>
  );
}
