import { type FormEvent, type ReactNode, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { usePerson } from '../app/session.ts';
import { Button } from '../parts/button.tsx';
import { Dialog, DialogActions } from '../parts/dialog.tsx';
import { Trouble } from '../parts/states.tsx';
import { TextField } from '../parts/text-field.tsx';
import { isWordGiven, LeadWordFields, wordToSend } from './lead-word.tsx';
import { type LeadWord, NobodyActs } from './use-command.ts';

interface ReasonDialogProps {
  readonly title: string;
  readonly children?: ReactNode;
  /** What will be done, as a verb. */
  readonly action: string;
  /** Reasons that are often right, one touch each. */
  readonly usual: readonly string[];
  readonly needsLead?: boolean;
  /** False while something else in the dialog is still to be chosen. */
  readonly isComplete?: boolean;
  readonly reasonLabel?: string;
  readonly error: Error | null;
  readonly isBusy: boolean;
  readonly onSend: (reason: string, lead: LeadWord | undefined) => void;
  readonly onClose: () => void;
}

/** The shortest reason that the record takes. */
const SHORTEST = 3;

/** Asks for the reason that goes into the record, and for the lead's word where one is needed. */
export function ReasonDialog(props: ReasonDialogProps) {
  const { t } = useTranslation();
  const person = usePerson();
  const [reason, setReason] = useState(props.usual.length === 1 ? (props.usual[0] ?? '') : '');
  const [word, setWord] = useState<LeadWord>({ personId: '', pin: '' });
  const needsLead = props.needsLead ?? false;
  const isReady =
    (props.isComplete ?? true) && reason.trim().length >= SHORTEST && (!needsLead || isWordGiven(person, word));
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (isReady) props.onSend(reason.trim(), needsLead ? wordToSend(person, word) : undefined);
  };
  return (
    <Dialog title={props.title} role="alertdialog" onClose={props.onClose}>
      <form onSubmit={submit}>
        {props.children}
        {props.usual.length > 1 ? (
          <div className="actions reason-usual">
            {props.usual.map((usual) => (
              <Button key={usual} onPress={() => setReason(usual)}>
                {usual}
              </Button>
            ))}
          </div>
        ) : null}
        <TextField
          label={props.reasonLabel ?? t('reason.label')}
          hint={t('reason.hint')}
          value={reason}
          onChange={setReason}
          isLong
        />
        {needsLead ? <LeadWordFields word={word} onChange={setWord} /> : null}
        {props.error && !(props.error instanceof NobodyActs) ? <Trouble error={props.error} /> : null}
        <DialogActions>
          <Button kind="primary" type="submit" isDisabled={!isReady || props.isBusy}>
            {props.action}
          </Button>
          <Button onPress={props.onClose}>{t('act.cancel')}</Button>
        </DialogActions>
      </form>
    </Dialog>
  );
}
