import { useTranslation } from 'react-i18next';
import { FormText } from '../forms/fields.tsx';
import { Select } from '../parts/select.tsx';
import { TextField } from '../parts/text-field.tsx';
import type { DevicePartProps } from './device-dialog.tsx';
import { SECURITIES } from './device-form.ts';

interface OpcUaFieldsProps extends DevicePartProps {
  readonly hasPassword: boolean;
}

/** How a joining system is reached. */
export function OpcUaFields({ form, hasPassword, onChange }: OpcUaFieldsProps) {
  const { t } = useTranslation('lead');
  const labelOf = (security: (typeof SECURITIES)[number]): string => {
    const [mode, policy = ''] = security.split(' ');
    if (mode === 'None') return t('devices.security-none');
    return t(mode === 'Sign' ? 'devices.security-signed' : 'devices.security-encrypted', { policy });
  };
  return (
    <div className="field-row">
      <FormText
        field="way.endpointUrl"
        label={t('devices.address')}
        hint={t('devices.address-hint')}
        value={form.endpointUrl}
        onChange={(endpointUrl) => onChange({ endpointUrl })}
      />
      <Select
        size="wide"
        label={t('devices.security')}
        value={form.security}
        options={SECURITIES.map((value) => ({ value, label: labelOf(value) }))}
        onChange={(security) => onChange({ security })}
      />
      <TextField
        label={t('devices.user')}
        hint={t('devices.user-hint')}
        value={form.userName}
        onChange={(userName) => onChange({ userName })}
      />
      <TextField
        type="password"
        label={t('devices.password')}
        hint={hasPassword ? t('devices.password-kept') : undefined}
        value={form.password}
        onChange={(password) => onChange({ password })}
      />
    </div>
  );
}
