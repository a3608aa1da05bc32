import { showNumber, showTorqueFigure } from '@clampwright/core/quantity';
import type { Toolbox } from '@clampwright/server/contract';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Select } from '../parts/select.tsx';
import type { ToolChoice } from './tool-choice.ts';

interface ToolFieldsProps {
  readonly toolbox: Toolbox;
  readonly choice: ToolChoice;
  readonly onChange: (choice: ToolChoice) => void;
  /** Wrenches that would be refused with what is put on them. */
  readonly refusedIds: ReadonlySet<string>;
}

/** Wrench, adapter and extension, each from what the workshop has. */
export function ToolFields({ toolbox, choice, onChange, refusedIds }: ToolFieldsProps) {
  const { t } = useTranslation();
  const language = useLanguage();
  const figure = (torqueNm: number) => showTorqueFigure(torqueNm, 'N·m', language);
  return (
    <>
      <Select
        size="wide"
        label={t('tool.wrench')}
        value={choice.wrenchId}
        onChange={(wrenchId) => onChange({ ...choice, wrenchId })}
        options={[
          { value: '', label: t('tool.choose-wrench') },
          ...toolbox.wrenches.map(({ id, name, serial, lowestNm, highestNm }) => ({
            value: id,
            label: t(refusedIds.has(id) ? 'tool.wrench-option-refused' : 'tool.wrench-option', {
              name,
              serial,
              from: figure(lowestNm),
              to: figure(highestNm),
            }),
          })),
        ]}
      />
      <Select
        size="wide"
        label={t('tool.adapter')}
        value={choice.adapterId}
        onChange={(adapterId) => onChange({ ...choice, adapterId })}
        options={[
          { value: '', label: t('tool.no-adapter') },
          ...toolbox.adapters.map(({ id, name, lengthMm, angleDeg }) => ({
            value: id,
            label: t('tool.adapter-option', {
              name,
              length: showNumber(lengthMm, language),
              angle: showNumber(angleDeg, language),
            }),
          })),
        ]}
      />
      <Select
        size="wide"
        label={t('tool.extension')}
        value={choice.extensionId}
        onChange={(extensionId) => onChange({ ...choice, extensionId })}
        options={[
          { value: '', label: t('tool.no-extension') },
          ...toolbox.extensions.map(({ id, name, lengthMm }) => ({
            value: id,
            label: t('tool.extension-option', { name, length: showNumber(lengthMm, language) }),
          })),
        ]}
      />
    </>
  );
}
