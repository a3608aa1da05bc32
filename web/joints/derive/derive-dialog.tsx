import { showNumber } from '@clampwright/core/quantity';
import { useQuery } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { FaultsProvider } from '../../forms/faults.tsx';
import { toolboxQuery } from '../../jobs/toolbox-query.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog, DialogActions } from '../../parts/dialog.tsx';
import { Notice } from '../../parts/notice.tsx';
import { Loading, Trouble } from '../../parts/states.tsx';
import { begunWith } from '../brought/begin-derivation.ts';
import type { Brought } from '../brought/brought.ts';
import type { JointForm } from '../form/joint-form.ts';
import { ownRowsQuery } from '../own-rows/own-rows.ts';
import { DeriveFields } from './derive-fields.tsx';
import { blankDerive, type DeriveChoices, type DeriveForm, deriveChoices, readDerive } from './derive-form.ts';
import { useDeriveWords } from './derive-words.ts';
import { DerivedFigures } from './derived-figures.tsx';
import { filledIn } from './fill.ts';

interface DeriveDialogProps {
  readonly joint: JointForm;
  /** The stage whose window is to be filled in, from 0. */
  readonly stageIndex: number;
  /** What was brought along from Bench. */
  readonly brought?: Brought | undefined;
  readonly onFill: (joint: JointForm) => void;
  readonly onClose: () => void;
}

/** Works a target out where the maker's figure is missing. */
export function DeriveDialog(props: DeriveDialogProps) {
  const { t } = useTranslation('lead');
  const ownRows = useQuery(ownRowsQuery);
  const toolbox = useQuery(toolboxQuery);
  const error = ownRows.error ?? toolbox.error;
  return (
    <Dialog title={t('derive.title', { stage: props.stageIndex + 1 })} size="wide" onClose={props.onClose}>
      <Notice kind="caution" title={t('derive.maker-first')}>
        <p>{t('derive.maker-first-text')}</p>
      </Notice>
      {error ? <Trouble error={error} /> : null}
      {ownRows.data && toolbox.data ? (
        <DeriveSheet {...props} choices={deriveChoices(ownRows.data, toolbox.data.wrenches, props.joint.fastener)} />
      ) : null}
      {error || (ownRows.data && toolbox.data) ? null : <Loading />}
    </Dialog>
  );
}

function DeriveSheet({
  joint,
  stageIndex,
  brought,
  choices,
  onFill,
  onClose,
}: DeriveDialogProps & { readonly choices: DeriveChoices }) {
  const { t } = useTranslation(['lead', 'technician']);
  const language = useLanguage();
  const words = useDeriveWords();
  const [form, setForm] = useState(() => begunWith(blankDerive(joint, language), brought, choices, language));
  const [isAskedFor, setAskedFor] = useState(false);
  const citing = { friction: words.frictionCited, method: words.methodCited };
  const { derived, plusMinusPercent, faults } = readDerive(form, choices, joint.torqueUnit, language, citing);
  const set = (part: Partial<DeriveForm>) => setForm((before) => ({ ...before, ...part }));
  const fill = (event: FormEvent) => {
    event.preventDefault();
    setAskedFor(true);
    if (!derived || plusMinusPercent === undefined) return;
    const { thread, propertyClass, threadFriction, bearingFriction, utilization } = derived.derivation.input;
    const ownMaterial = derived.derivation.ownRows.find((row) => row.kind === 'material');
    const figure = (value: number) => showNumber(value, language);
    const sourceText = t('lead:derive.source-text', {
      fastener: [thread, propertyClass ?? ownMaterial?.name].join(' '),
      thread: figure(threadFriction),
      bearing: figure(bearingFriction),
      utilization: figure(Math.round(utilization * 1000) / 10),
    });
    onFill(filledIn(joint, stageIndex, { derived, plusMinusPercent, sourceText }, language));
  };
  return (
    <FaultsProvider faults={faults} isAskedFor={isAskedFor}>
      <form onSubmit={fill}>
        <DeriveFields form={form} choices={choices} onChange={set} />
        {derived && plusMinusPercent !== undefined ? (
          <>
            <p className="derived-window">
              {t('lead:derive.fills', {
                target: showNumber(derived.target, language),
                unit: joint.torqueUnit,
                percent: showNumber(plusMinusPercent, language),
              })}
            </p>
            {derived.derivation.output.utilizationAtUpper > 1 ? (
              <Notice kind="caution" title={t('lead:derive.yields-at-upper')} />
            ) : null}
            <DerivedFigures derivation={derived.derivation} torqueUnit={joint.torqueUnit} />
          </>
        ) : (
          <p className="soft">{t('lead:derive.not-yet')}</p>
        )}
        <DialogActions>
          <Button kind="primary" type="submit">
            {t('lead:derive.fill', { stage: stageIndex + 1 })}
          </Button>
          <Button onPress={onClose}>{t('technician:act.cancel')}</Button>
        </DialogActions>
      </form>
    </FaultsProvider>
  );
}
