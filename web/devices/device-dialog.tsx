import type { ShownDevice } from '@clampwright/server/contract';
import { useQuery } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { useWho } from '../app/who.tsx';
import { FaultsProvider } from '../forms/faults.tsx';
import { FormFigure, FormText } from '../forms/fields.tsx';
import { toolboxQuery } from '../jobs/toolbox-query.ts';
import { Dialog } from '../parts/dialog.tsx';
import { KeepActions } from '../parts/keep-actions.tsx';
import { Select } from '../parts/select.tsx';
import { newIdentity } from '../work/identity.ts';
import { BLANK_DEVICE, type DeviceForm, formOf, readDevice, WAYS } from './device-form.ts';
import { lineDescriptionsQuery, mappingNamesQuery, useDeviceAct } from './devices.ts';
import { OpcUaFields } from './opc-ua-fields.tsx';

interface DeviceDialogProps {
  /** Undefined: a new one. */
  readonly shown: ShownDevice | undefined;
  readonly onClose: () => void;
}

/** Sets up a device, or changes how it is set up. */
export function DeviceDialog({ shown, onClose }: DeviceDialogProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const who = useWho();
  const act = useDeviceAct();
  const [newId] = useState(newIdentity);
  const [isAskedFor, setAskedFor] = useState(false);
  const [form, setForm] = useState(shown ? formOf(shown.device) : BLANK_DEVICE);
  const { value, faults } = readDevice(form, shown?.device.id ?? newId, language);
  const set = (part: Partial<DeviceForm>) => setForm((before) => ({ ...before, ...part }));
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    setAskedFor(true);
    const keepPassword = (shown?.hasPassword ?? false) && form.password === '';
    if (value && (await who.ask())) act.mutate({ kind: 'save', device: value, keepPassword }, { onSuccess: onClose });
  };
  return (
    <Dialog title={shown?.device.name ?? t('devices.add')} size="wide" onClose={onClose}>
      <FaultsProvider faults={faults} isAskedFor={isAskedFor}>
        <form onSubmit={(event) => void submit(event)}>
          <NameFields form={form} onChange={set} />
          {form.kind === 'serial' ? <SerialFields form={form} onChange={set} /> : null}
          {form.kind === 'opc-ua' ? (
            <OpcUaFields form={form} hasPassword={shown?.hasPassword ?? false} onChange={set} />
          ) : null}
          {form.kind === 'folder' ? <FolderFields form={form} onChange={set} /> : null}
          <KeepActions action={t('devices.save')} sending={act} onCancel={onClose} />
        </form>
      </FaultsProvider>
    </Dialog>
  );
}

export interface DevicePartProps {
  readonly form: DeviceForm;
  readonly onChange: (part: Partial<DeviceForm>) => void;
}

function NameFields({ form, onChange }: DevicePartProps) {
  const { t } = useTranslation('lead');
  const { data } = useQuery(toolboxQuery);
  const wrenches = (data?.wrenches ?? []).map(({ id, name, serial }) => ({ value: id, label: `${name} (${serial})` }));
  return (
    <div className="field-row">
      <FormText field="name" label={t('devices.name')} value={form.name} onChange={(name) => onChange({ name })} />
      <Select
        label={t('devices.kind')}
        value={form.kind}
        options={WAYS.map((value) => ({ value, label: t(`devices.kind-${value}`) }))}
        onChange={(kind) => onChange({ kind })}
      />
      <Select
        label={t('devices.wrench')}
        hint={t('devices.wrench-hint')}
        value={form.wrenchId}
        options={[{ value: '', label: t('devices.wrench-any'), isDisabled: form.kind === 'folder' }, ...wrenches]}
        onChange={(wrenchId) => onChange({ wrenchId })}
      />
    </div>
  );
}

function SerialFields({ form, onChange }: DevicePartProps) {
  const { t } = useTranslation('lead');
  const { data = [] } = useQuery(lineDescriptionsQuery);
  return (
    <div className="field-row">
      <FormText
        field="way.path"
        label={t('devices.path')}
        hint={t('devices.path-hint')}
        value={form.path}
        onChange={(path) => onChange({ path })}
      />
      <FormFigure
        field="way.baudRate"
        label={t('devices.baud')}
        value={form.baudRate}
        onChange={(baudRate) => onChange({ baudRate })}
      />
      <Select
        label={t('devices.lines')}
        value={form.lines}
        options={data.map(({ name }) => ({ value: name, label: name }))}
        onChange={(lines) => onChange({ lines })}
      />
    </div>
  );
}

function FolderFields({ form, onChange }: DevicePartProps) {
  const { t } = useTranslation('lead');
  const { data = [] } = useQuery(mappingNamesQuery);
  return (
    <div className="field-row">
      <FormText
        field="way.folder"
        label={t('devices.folder')}
        hint={t('devices.folder-hint')}
        value={form.folder}
        onChange={(folder) => onChange({ folder })}
      />
      <Select
        label={t('devices.mapping')}
        hint={data.length === 0 ? t('devices.mapping-none') : undefined}
        value={form.mapping}
        options={[{ value: '', label: '' }, ...data.map(({ name }) => ({ value: name, label: name }))]}
        onChange={(mapping) => onChange({ mapping })}
      />
    </div>
  );
}
