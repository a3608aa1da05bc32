import { showNumber, showTorqueFigure } from '@clampwright/core/quantity';
import type { Tool } from '@clampwright/core/wrench';
import type { Toolbox } from '@clampwright/server/contract';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Select } from '../parts/select.tsx';

/** Identities of what was chosen; empty for none. */
export interface ToolChoice {
  readonly wrenchId: string;
  readonly adapterId: string;
  readonly extensionId: string;
}

/** The tool of a choice; undefined while no wrench is chosen. */
export function toolOf(choice: ToolChoice, toolbox: Toolbox): Tool | undefined {
  const wrench = toolbox.wrenches.find(({ id }) => id === choice.wrenchId);
  const adapter = toolbox.adapters.find(({ id }) => id === choice.adapterId);
  const extension = toolbox.extensions.find(({ id }) => id === choice.extensionId);
  return wrench && { wrench, ...(adapter ? { adapter } : {}), ...(extension ? { extension } : {}) };
}

interface ToolFieldsProps {
  readonly toolbox: Toolbox;
  readonly choice: ToolChoice;
  readonly onChange: (choice: ToolChoice) => void;
}

/** Wrench, adapter and extension, each from what the workshop has. */
export function ToolFields({ toolbox, choice, onChange }: ToolFieldsProps) {
  const { t } = useTranslation();
  const language = useLanguage();
  const figure = (torqueNm: number) => showTorqueFigure(torqueNm, 'N·m', language);
  return (
    <>
      <Select
        label={t('tool.wrench')}
        value={choice.wrenchId}
        onChange={(wrenchId) => onChange({ ...choice, wrenchId })}
        options={[
          { value: '', label: t('tool.choose-wrench') },
          ...toolbox.wrenches.map(({ id, name, serial, lowestNm, highestNm }) => ({
            value: id,
            label: t('tool.wrench-option', { name, serial, from: figure(lowestNm), to: figure(highestNm) }),
          })),
        ]}
      />
      <Select
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
