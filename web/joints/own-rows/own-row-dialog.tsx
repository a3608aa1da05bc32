import type { OwnRow } from '@clampwright/core/fastener';
import { useQuery } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { useWho } from '../../app/who.tsx';
import { FaultsProvider } from '../../forms/faults.tsx';
import { FormText } from '../../forms/fields.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { KeepActions } from '../../parts/keep-actions.tsx';
import { Select } from '../../parts/select.tsx';
import { newIdentity } from '../../work/identity.ts';
import { BoltFields, FrictionFields, StrengthFields } from './own-row-fields.tsx';
import { type OwnRowForm, ownRowForm, readOwnRow } from './own-row-form.ts';
import { ownRowsQuery, useAddOwnRow } from './own-rows.ts';

const KINDS = ['lubricant', 'material', 'bolt'] as const;

interface OwnRowDialogProps {
  /** The row whose place the new one takes. */
  readonly before: OwnRow | undefined;
  readonly onClose: () => void;
}

/** Writes a row of the workshop's own. */
export function OwnRowDialog({ before, onClose }: OwnRowDialogProps) {
  const { t } = useTranslation(['lead', 'technician']);
  const language = useLanguage();
  const who = useWho();
  const adding = useAddOwnRow();
  const [id] = useState(newIdentity);
  const [form, setForm] = useState(() => ownRowForm(before, language));
  const [isAskedFor, setAskedFor] = useState(false);
  const { data: rows = [] } = useQuery(ownRowsQuery);
  const { row, faults } = readOwnRow(form, { id, supersedes: before?.id, rows }, language);
  const set = (part: Partial<OwnRowForm>) => setForm((was) => ({ ...was, ...part }));
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    setAskedFor(true);
    if (row && (await who.ask())) adding.mutate(row, { onSuccess: onClose });
  };
  const title = before ? t('lead:own.supersede-title', { name: before.name }) : t('lead:own.add');
  return (
    <Dialog title={title} size="wide" onClose={onClose}>
      <FaultsProvider faults={faults} isAskedFor={isAskedFor}>
        <form onSubmit={(event) => void submit(event)}>
          {before ? <p className="soft">{t('lead:own.supersede-text')}</p> : null}
          <div className="field-row">
            <Select
              label={t('lead:own.kind')}
              value={form.kind}
              isDisabled={before !== undefined}
              options={KINDS.map((value) => ({ value, label: t(`lead:own.kind-${value}`) }))}
              onChange={(kind) => set({ kind })}
            />
            <FormText
              field="name"
              label={t(form.kind === 'bolt' ? 'lead:own.designation' : 'lead:own.name')}
              hint={t(form.kind === 'bolt' ? 'lead:own.designation-hint' : 'lead:own.name-hint')}
              value={form.name}
              onChange={(name) => set({ name })}
            />
          </div>
          <FiguresOfKind form={form} onChange={set} />
          <FormText
            isLong
            field="source"
            label={t('lead:own.source')}
            hint={t('lead:own.source-hint')}
            value={form.source}
            onChange={(source) => set({ source })}
          />
          <KeepActions
            action={before ? t('lead:own.supersede') : t('lead:own.add')}
            sending={adding}
            onCancel={onClose}
          />
        </form>
      </FaultsProvider>
    </Dialog>
  );
}

const FIGURES = { lubricant: FrictionFields, material: StrengthFields, bolt: BoltFields } as const;

function FiguresOfKind(props: Parameters<typeof BoltFields>[0]) {
  const Fields = FIGURES[props.form.kind];
  return <Fields {...props} />;
}
