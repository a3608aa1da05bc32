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
}

export const BLANK_ADAPTER: AdapterForm = { name: '', length: '', lengthUnit: 'mm', angle: '0' };

export function readAdapter(form: AdapterForm, id: string, language: Language): FormReading<Adapter> {
  const reader = readerIn(language);
  const adapter = whole({
    id,
    name: reader.text('name', form.name),
    lengthMm: readLengthMm(reader, 'lengthMm', form.length, form.lengthUnit),
    angleDeg: reader.number('angleDeg', form.angle, { from: 0, to: 180 }),
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
}

export const BLANK_EXTENSION: ExtensionForm = { name: '', length: '', lengthUnit: 'mm', stiffness: '', unit: 'N·m' };

export function readExtension(form: ExtensionForm, id: string, language: Language): FormReading<Extension> {
  const reader = readerIn(language);
  const isKnown = form.stiffness.trim() !== '';
  const extension = whole({
    id,
    name: reader.text('name', form.name),
    lengthMm: readLengthMm(reader, 'lengthMm', form.length, form.lengthUnit),
    ...(isKnown ? { stiffnessNmPerDeg: reader.torqueNm('stiffnessNmPerDeg', form.stiffness, form.unit) } : {}),
  });
  return reading(extension, reader);
}
