import { wrenchSetting } from '@clampwright/core/procedure';
import { type Language, showAngle, showNumber, showTorque } from '@clampwright/core/quantity';
import type { Adapter, Extension, Wrench } from '@clampwright/core/wrench';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Button } from '../parts/button.tsx';
import { Ledger, LedgerRow } from '../parts/ledger.tsx';
import { Select } from '../parts/select.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { exampleTorqueNm } from './example-torque.ts';

interface AdapterListProps {
  readonly adapters: readonly Adapter[];
  readonly wrenches: readonly Wrench[];
  readonly onAdd: (() => void) | undefined;
}

/** Adapters, with what each does to the setting of a wrench. */
export function AdapterList({ adapters, wrenches, onAdd }: AdapterListProps) {
  const { t } = useTranslation('lead');
  const [wrenchId, setWrenchId] = useState('');
  const wrench = wrenches.find((one) => one.id === wrenchId) ?? wrenches[0];
  return (
    <Sheet
      title={t('wrenches.adapters')}
      side={onAdd ? <Button onPress={onAdd}>{t('wrenches.add-adapter')}</Button> : null}
    >
      <p className="soft">{t('wrenches.adapters-about')}</p>
      {wrench && adapters.length > 0 ? (
        <Select
          label={t('wrenches.on-wrench')}
          value={wrench.id}
          options={wrenches.map((one) => ({ value: one.id, label: one.name }))}
          onChange={setWrenchId}
        />
      ) : null}
      {adapters.length > 0 ? (
        <Ledger label={t('wrenches.adapters')}>
          {adapters.map((adapter) => (
            <AdapterRow key={adapter.id} adapter={adapter} wrench={wrench} />
          ))}
        </Ledger>
      ) : null}
    </Sheet>
  );
}

function AdapterRow({ adapter, wrench }: { readonly adapter: Adapter; readonly wrench: Wrench | undefined }) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const torqueNm = wrench ? exampleTorqueNm(wrench) : 0;
  const setting = wrench && wrenchSetting(torqueNm, wrench.leverMm, adapter);
  return (
    <LedgerRow
      title={adapter.name}
      facts={[
        t('wrenches.adapter-size', {
          length: showNumber(adapter.lengthMm, language),
          angle: `${showNumber(adapter.angleDeg, language)}°`,
        }),
      ]}
      side={
        setting?.ok ? (
          <span className="effect">
            <span className="effect-figure">{showTorque(setting.value.settingNm, 'N·m', language)}</span>
            <span className="soft">
              {t('wrenches.adapter-effect', {
                torque: roundTorque(torqueNm, language),
                factor: showNumber(setting.value.factor, language, { decimals: 4 }),
              })}
            </span>
          </span>
        ) : (
          <span>{t('wrenches.adapter-impossible')}</span>
        )
      }
    />
  );
}

/** A torque that is an example has no digits to show beyond its own. */
const roundTorque = (torqueNm: number, language: Language) => `${showNumber(torqueNm, language)}\u00a0N·m`;

interface ExtensionListProps {
  readonly extensions: readonly Extension[];
  readonly onAdd: (() => void) | undefined;
}

const EXAMPLE_NM = 100;

/** Extensions: no change of torque, but they wind up. */
export function ExtensionList({ extensions, onAdd }: ExtensionListProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  return (
    <Sheet
      title={t('wrenches.extensions')}
      side={onAdd ? <Button onPress={onAdd}>{t('wrenches.add-extension')}</Button> : null}
    >
      <p className="soft">{t('wrenches.extensions-about')}</p>
      {extensions.length > 0 ? (
        <Ledger label={t('wrenches.extensions')}>
          {extensions.map(({ id, name, lengthMm, stiffnessNmPerDeg }) => (
            <LedgerRow
              key={id}
              title={name}
              facts={[t('wrenches.extension-size', { length: showNumber(lengthMm, language) })]}
              side={
                stiffnessNmPerDeg === undefined
                  ? t('wrenches.extension-unknown')
                  : t('wrenches.extension-effect', {
                      angle: showAngle(EXAMPLE_NM / stiffnessNmPerDeg, language),
                      torque: roundTorque(EXAMPLE_NM, language),
                    })
              }
            />
          ))}
        </Ledger>
      ) : null}
    </Sheet>
  );
}
