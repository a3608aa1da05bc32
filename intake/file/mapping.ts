import { instantSchema } from '@clampwright/core/record';
import { z } from 'zod';
import { isZone } from './zone.ts';

/** A column: by the name in the header row, or by its number from 1. */
export const columnSchema = z.union([z.string().trim().min(1).max(200), z.number().int().min(1).max(1000)]);
export type Column = z.infer<typeof columnSchema>;

export const DELIMITERS = [',', ';', '\t', '|'] as const;
export const ENCODINGS = ['utf-8', 'utf-16le', 'utf-16be', 'windows-1252'] as const;
export type Encoding = (typeof ENCODINGS)[number];

const columnUnit = z.strictObject({ column: columnSchema });
const torqueUnits = z.enum(['N·m', 'cN·m', 'dN·m', 'kN·m', 'lbf·ft', 'lbf·in', 'ozf·in', 'kgf·m', 'kgf·cm']);
const angleUnits = z.enum(['deg', 'rad', 'turn']);

/** Wall-clock forms, named by Unicode's date field symbols. Each may carry a fraction of the second where it has seconds. */
export const WALL_FORMATS = ['iso-8601', 'dd.MM.yyyy HH:mm:ss', 'MM/dd/yyyy HH:mm:ss', 'yyyy-MM-dd HH:mm'] as const;
export type WallFormat = (typeof WALL_FORMATS)[number];

const zoneSchema = z.string().refine(isZone, 'an IANA time zone such as Europe/Zurich');

/** Where the time of a pull, or of a sample, stands and how it is written. */
const timeSchema = z.discriminatedUnion('format', [
  /** `zone` is the clock's own; an offset written in the time itself comes first. */
  z.strictObject({ column: columnSchema, format: z.enum(WALL_FORMATS), zone: zoneSchema }),
  z.strictObject({ column: columnSchema, format: z.literal('unix-seconds') }),
  /** Seconds since `start`; for curves, since the start of each curve. */
  z.strictObject({ column: columnSchema, format: z.literal('elapsed-seconds'), start: instantSchema }),
]);
export type TimeMapping = z.infer<typeof timeSchema>;

/** How a file of any layout is read: written once, kept by name. A verdict in the file is never read. */
export const mappingSchema = z
  .strictObject({
    name: z.string().trim().min(1).max(100),
    delimiter: z.enum(['auto', ...DELIMITERS]).default('auto'),
    encoding: z.enum(['auto', ...ENCODINGS]).default('auto'),
    decimalSign: z.enum(['comma', 'point']),
    /** Lines before the header row, or before the first row of figures, that are passed over. */
    linesBefore: z.number().int().min(0).max(1000).default(0),
    headerRow: z.boolean(),
    /** `pull`: each row is one; `sample`: rows that follow each other with the same value of `curveBy` are one pull. */
    rows: z
      .discriminatedUnion('each', [
        z.strictObject({ each: z.literal('pull') }),
        z.strictObject({ each: z.literal('sample'), curveBy: columnSchema }),
      ])
      .default({ each: 'pull' }),
    torque: columnSchema,
    torqueUnit: z.union([z.strictObject({ unit: torqueUnits }), columnUnit]),
    /** `positive-tightens`: a negative torque is a loosening and refused. `negative-tightens`: the other way about. */
    signs: z.enum(['positive-tightens', 'negative-tightens']).default('positive-tightens'),
    angle: columnSchema.optional(),
    angleUnit: z.union([z.strictObject({ unit: angleUnits }), columnUnit]).default({ unit: 'deg' }),
    time: timeSchema.optional(),
    /** Left out: the next position of the job. */
    position: columnSchema.optional(),
    joint: columnSchema.optional(),
    stage: columnSchema.optional(),
    round: columnSchema.optional(),
    wrenchSerial: columnSchema.optional(),
    /** Columns known to be of no use, such as a verdict; kept so that nobody wonders about them again. */
    ignored: z.array(columnSchema).max(200).default([]),
  })
  .superRefine((mapping, context) => {
    const refuse = (path: string, message: string) => context.addIssue({ code: 'custom', path: [path], message });
    const used = usedColumns(mapping);
    if (!mapping.headerRow) {
      const named = used.find(([, column]) => typeof column === 'string');
      if (named) refuse(named[0], 'a number from 1, as there is no header row');
    }
    if (mapping.rows.each === 'sample' && !mapping.time) refuse('time', 'the time of each sample');
    if (mapping.rows.each === 'sample' && !mapping.angle) refuse('angle', 'the angle of each sample');
    const both = used.find(([, column]) => mapping.ignored.includes(column));
    if (both) refuse('ignored', `no column that is used: ${both[1]} is the ${both[0]}`);
  });
export type Mapping = z.infer<typeof mappingSchema>;
/** A mapping as it is written down: what has a usual value may be left out. */
export type WrittenMapping = z.input<typeof mappingSchema>;

/** What a column is used for. */
export const COLUMN_FIELDS = [
  'curveBy',
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
] as const;
export type ColumnField = (typeof COLUMN_FIELDS)[number];

/** Every column that the mapping reads, with what for. */
export function usedColumns(mapping: Mapping): readonly (readonly [ColumnField, Column])[] {
  const { torqueUnit, angleUnit, rows } = mapping;
  const all: readonly (readonly [ColumnField, Column | undefined])[] = [
    ['curveBy', rows.each === 'sample' ? rows.curveBy : undefined],
    ['position', mapping.position],
    ['torque', mapping.torque],
    ['torqueUnit', 'column' in torqueUnit ? torqueUnit.column : undefined],
    ['angle', mapping.angle],
    ['angleUnit', 'column' in angleUnit ? angleUnit.column : undefined],
    ['time', mapping.time?.column],
    ['joint', mapping.joint],
    ['stage', mapping.stage],
    ['round', mapping.round],
    ['wrenchSerial', mapping.wrenchSerial],
  ];
  return all.flatMap(([field, column]) => (column === undefined ? [] : [[field, column] as const]));
}
