import type { Language, TorqueUnit } from '@clampwright/core/quantity';
import type { Adapter, Extension } from '@clampwright/core/wrench';
import { readerIn } from '../../forms/reader.ts';
import { whole } from '../../forms/whole.ts';
import { type FormReading, type LengthUnit, reading, readLengthMm } from './wrench-form.ts';

/* What is put on a wrench: adapters and extensions. */

export interface AdapterForm {
  readonly name: string;
  readonly length: string;
  readonly lengthUnit: LengthUnit;
  readonly angle: string;
  /** Standard uncertainty of the length, mm; empty: read from a rule. */
  readonly lengthUncertainty: string;
}

export const BLANK_ADAPTER: AdapterForm = { name: '', length: '', lengthUnit: 'mm', angle: '0', lengthUncertainty: '' };

export function readAdapter(form: AdapterForm, id: string, language: Language): FormReading<Adapter> {
  const reader = readerIn(language);
  const adapter = whole({
    id,
    name: reader.text('name', form.name),
    lengthMm: readLengthMm(reader, 'lengthMm', form.length, form.lengthUnit),
    angleDeg: reader.number('angleDeg', form.angle, { from: 0, to: 180 }),
    ...(form.lengthUncertainty.trim() === ''
      ? {}
      : {
          lengthStandardUncertaintyMm: reader.number('lengthStandardUncertaintyMm', form.lengthUncertainty, {
            from: 0,
          }),
        }),
  });
  return reading(adapter, reader);
}

export interface ExtensionForm {
  readonly name: string;
  readonly length: string;
  readonly lengthUnit: LengthUnit;
  /** Torque that twists it by one degree; empty: not known. */
  readonly stiffness: string;
  readonly unit: TorqueUnit;
  /** Standard uncertainty of the stiffness, percent; empty: not known. */
  readonly stiffnessUncertainty: string;
}

export const BLANK_EXTENSION: ExtensionForm = {
  name: '',
  length: '',
  lengthUnit: 'mm',
  stiffness: '',
  unit: 'N·m',
  stiffnessUncertainty: '',
};

export function readExtension(form: ExtensionForm, id: string, language: Language): FormReading<Extension> {
  const reader = readerIn(language);
  const isSure = form.stiffnessUncertainty.trim() !== '';
  const isKnown = form.stiffness.trim() !== '' || isSure;
  const extension = whole({
    id,
    name: reader.text('name', form.name),
    lengthMm: readLengthMm(reader, 'lengthMm', form.length, form.lengthUnit),
    ...(isKnown ? { stiffnessNmPerDeg: reader.torqueNm('stiffnessNmPerDeg', form.stiffness, form.unit) } : {}),
    ...(isSure
      ? {
          stiffnessStandardUncertaintyPercent: reader.number(
            'stiffnessStandardUncertaintyPercent',
            form.stiffnessUncertainty,
            { from: 0, to: 100 },
          ),
        }
      : {}),
  });
  return reading(extension, reader);
}
