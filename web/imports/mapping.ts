import type { TorqueUnit } from '@clampwright/core/quantity';

/* How a file is to be read, as the server takes it: see `mappingSchema` of intake, which has the last word. */

export type Column = string | number;

export const TIME_FORMATS = [
  'iso-8601',
  'dd.MM.yyyy HH:mm:ss',
  'MM/dd/yyyy HH:mm:ss',
  'yyyy-MM-dd HH:mm',
  'unix-seconds',
  'elapsed-seconds',
] as const;
export type TimeFormat = (typeof TIME_FORMATS)[number];

export const DELIMITERS = ['auto', ';', ',', '\t', '|'] as const;
export const ENCODINGS = ['auto', 'utf-8', 'utf-16le', 'utf-16be', 'windows-1252'] as const;
export const ANGLE_UNITS = ['deg', 'rad', 'turn'] as const;
export const SIGNS = ['positive-tightens', 'negative-tightens'] as const;

/** What a column may be used for; `none` is passed over. */
export const ROLES = [
  'none',
  'position',
  'torque',
  'torqueUnit',
  'angle',
  'angleUnit',
  'time',
  'joint',
  'stage',
  'round',
  'wrenchSerial',
  'curveBy',
] as const;
export type Role = (typeof ROLES)[number];

export type TimeMapping =
  | {
      readonly column: Column;
      readonly format: Exclude<TimeFormat, 'unix-seconds' | 'elapsed-seconds'>;
      readonly zone: string;
    }
  | { readonly column: Column; readonly format: 'unix-seconds' }
  | { readonly column: Column; readonly format: 'elapsed-seconds'; readonly start: string };

export interface Mapping {
  readonly name: string;
  readonly delimiter: (typeof DELIMITERS)[number];
  readonly encoding: (typeof ENCODINGS)[number];
  readonly decimalSign: 'comma' | 'point';
  readonly linesBefore: number;
  readonly headerRow: boolean;
  readonly rows: { readonly each: 'pull' } | { readonly each: 'sample'; readonly curveBy: Column };
  readonly torque: Column;
  readonly torqueUnit: { readonly unit: TorqueUnit } | { readonly column: Column };
  readonly signs: (typeof SIGNS)[number];
  readonly angle?: Column;
  readonly angleUnit: { readonly unit: (typeof ANGLE_UNITS)[number] } | { readonly column: Column };
  readonly time?: TimeMapping;
  readonly position?: Column;
  readonly joint?: Column;
  readonly stage?: Column;
  readonly round?: Column;
  readonly wrenchSerial?: Column;
  readonly ignored: readonly Column[];
}

/** A proposal of the server for a file, and what of it wants a look. */
export interface Guess {
  readonly mapping: Partial<Mapping>;
  readonly doubts: readonly { readonly field: string; readonly message: string }[];
  readonly header?: readonly string[];
  readonly rows: readonly (readonly string[])[];
}
