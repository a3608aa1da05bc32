import { showNumber, showShare, showTorqueFigure } from '@clampwright/core/quantity';
import type { Toolbox } from '@clampwright/server/contract';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Select } from '../parts/select.tsx';
import type { RankedWrench } from './tool-assessment.ts';
import type { ToolChoice } from './tool-choice.ts';

interface ToolFieldsProps {
  readonly toolbox: Toolbox;
  readonly choice: ToolChoice;
  readonly onChange: (choice: ToolChoice) => void;
  /** The wrenches with what is put on them, the best first. */
  readonly ranked: readonly RankedWrench[];
}

/** Wrench, adapter and extension, each from what the workshop has. */
export function ToolFields({ toolbox, choice, onChange, ranked }: ToolFieldsProps) {
  const { t } = useTranslation();
  const language = useLanguage();
  const figure = (torqueNm: number) => showTorqueFigure(torqueNm, 'N·m', language);
  return (
    <>
      <Select
        size="wide"
        label={t('tool.wrench')}
        hint={t('tool.ranking')}
        value={choice.wrenchId}
        onChange={(wrenchId) => onChange({ ...choice, wrenchId })}
        options={[
          { value: '', label: t('tool.choose-wrench') },
          ...ranked.map(({ tool: { wrench }, shareLeft, objections }) => ({
            value: wrench.id,
            label: t(objections.length > 0 ? 'tool.wrench-option-refused' : 'tool.wrench-option-ranked', {
              name: wrench.name,
              serial: wrench.serial,
              from: figure(wrench.lowestNm),
              to: figure(wrench.highestNm),
              share: showShare(Number(shareLeft.toPrecision(2)), language),
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
