import type { LineDescription } from '@clampwright/core/line';
import { isTorqueUnit, unitsOf } from '@clampwright/core/quantity';
import { type FormEvent, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { useWho } from '../app/who.tsx';
import { Dialog } from '../parts/dialog.tsx';
import { KeepActions } from '../parts/keep-actions.tsx';
import { Notice } from '../parts/notice.tsx';
import { Select } from '../parts/select.tsx';
import { TextField } from '../parts/text-field.tsx';
import { useDeviceAct } from './devices.ts';
import { LineEnd } from './line-end.tsx';
import { BLANK_LINES, DELIMITER_NAMES, formOfLines, type LineForm, readLineForm } from './line-form.ts';
import { LineKinds } from './line-kinds.tsx';
import { LineTry } from './line-try.tsx';

interface LineDialogProps {
  /** Undefined: a new one. */
  readonly description: LineDescription | undefined;
  readonly heard: readonly string[];
  readonly onClose: () => void;
}

/** Describes the lines of a wrench, and shows at once what is understood by it. */
export function LineDialog({ description, heard, onClose }: LineDialogProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const who = useWho();
  const act = useDeviceAct();
  const [form, setForm] = useState(description ? formOfLines(description) : BLANK_LINES);
  const [isAskedFor, setAskedFor] = useState(false);
  const reading = readLineForm(form, language);
  const set = (part: Partial<LineForm>) => setForm((before) => ({ ...before, ...part }));
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    setAskedFor(true);
    if (!reading.description || !(await who.ask())) return;
    act.mutate({ kind: 'save-lines', description: reading.description }, { onSuccess: onClose });
  };
  return (
    <Dialog title={description?.name ?? t('lines.add')} size="wide" onClose={onClose}>
      <form onSubmit={(event) => void submit(event)}>
        <HeadFields form={form} onChange={set} />
        <LineKinds lines={form.lines} onChange={(lines) => set({ lines })} />
        <LineEnd form={form} onChange={set} />
        {reading.wrong && isAskedFor ? <Notice kind="alarm" title={t(`lines.wrong-${reading.wrong}`)} isLive /> : null}
        <LineTry description={reading.description} heard={heard} />
        <KeepActions action={t('lines.save')} sending={act} onCancel={onClose} />
      </form>
    </Dialog>
  );
}

export interface LinePartProps {
  readonly form: LineForm;
  readonly onChange: (part: Partial<LineForm>) => void;
}

const TORQUE_UNITS = unitsOf('torque').filter(isTorqueUnit);
const DELIMITERS = [';', ',', ' ', '\t', '|', ':', '/'] as const;
const DECIMAL_SIGNS = ['point', 'comma'] as const;
const ANGLE_UNITS = ['deg', 'rad', 'turn'] as const;

function HeadFields({ form, onChange }: LinePartProps) {
  const { t } = useTranslation('lead');
  return (
    <div className="field-row">
      <TextField label={t('lines.name')} value={form.name} onChange={(name) => onChange({ name })} />
      <Select
        label={t('lines.delimiter')}
        value={form.delimiter}
        options={DELIMITERS.map((value) => ({ value, label: t(`lines.delimiter-${DELIMITER_NAMES[value]}`) }))}
        onChange={(delimiter) => onChange({ delimiter })}
      />
      <Select
        size="narrow"
        label={t('lines.decimal')}
        value={form.decimalSign}
        options={DECIMAL_SIGNS.map((value) => ({ value, label: t(`lines.decimal-${value}`) }))}
        onChange={(decimalSign) => onChange({ decimalSign })}
      />
      <Select
        size="narrow"
        label={t('lines.unit')}
        value={form.torqueUnit}
        options={TORQUE_UNITS.map((value) => ({ value, label: value }))}
        onChange={(torqueUnit) => onChange({ torqueUnit })}
      />
      <Select
        size="narrow"
        label={t('lines.angle-unit')}
        value={form.angleUnit}
        options={ANGLE_UNITS.map((value) => ({ value, label: t(`lines.angle-${value}`) }))}
        onChange={(angleUnit) => onChange({ angleUnit })}
      />
    </div>
  );
}
