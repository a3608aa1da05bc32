import { type LineDescription, type LineField, type LineKind, lineDescriptionSchema } from '@clampwright/core/line';
import { type Language, readNumber } from '@clampwright/core/quantity';

export const DELIMITER_NAMES = {
  ' ': 'blank',
  ',': 'comma',
  ';': 'semicolon',
  '\t': 'tab',
  '|': 'bar',
  ':': 'colon',
  '/': 'slash',
} as const satisfies Record<LineDescription['delimiter'], string>;

/** What a field can mean, as it is chosen: meanings that come in kinds stand as one for each kind. */
export const MEANINGS = {
  torque: { means: 'torque' },
  'torque-unit': { means: 'torque-unit' },
  angle: { means: 'angle' },
  number: { means: 'number' },
  position: { means: 'position' },
  serial: { means: 'serial' },
  'time-iso-8601': { means: 'time', written: 'iso-8601' },
  'time-unix-seconds': { means: 'time', written: 'unix-seconds' },
  'elapsed-s': { means: 'elapsed', unit: 's' },
  'elapsed-ms': { means: 'elapsed', unit: 'ms' },
  fastest: { means: 'fastest' },
  'sample-count': { means: 'sample-count' },
  identity: { means: 'identity' },
  mark: { means: 'mark', text: '' },
  'check-crc-16': { means: 'check', method: 'crc-16' },
  'check-xor-8': { means: 'check', method: 'xor-8' },
  'check-sum-8': { means: 'check', method: 'sum-8' },
  'passed-over': { means: 'passed-over' },
} as const satisfies Record<string, LineField>;
export type Meaning = keyof typeof MEANINGS;

const isMeaning = (name: string): name is Meaning => Object.hasOwn(MEANINGS, name);

/** The choice that a field is. */
export function meaningOf(field: LineField): Meaning {
  const name = [
    field.means,
    ...('written' in field ? [field.written] : []),
    ...('unit' in field ? [field.unit] : []),
    ...('method' in field ? [field.method] : []),
  ].join('-');
  if (!isMeaning(name)) throw new Error(`a field means one of the known meanings, not ${name}`);
  return name;
}

/** A description while it is written: figures as typed. */
export interface LineForm {
  readonly name: string;
  readonly delimiter: LineDescription['delimiter'];
  readonly decimalSign: LineDescription['decimalSign'];
  readonly torqueUnit: LineDescription['torqueUnit'];
  readonly angleUnit: LineDescription['angleUnit'];
  readonly lines: readonly LineKind[];
  readonly end: LineDescription['endOfPull']['by'];
  readonly below: string;
  readonly samples: string;
  readonly seconds: string;
  readonly rate: string;
}

export const BLANK_LINES: LineForm = {
  name: '',
  delimiter: ';',
  decimalSign: 'point',
  torqueUnit: 'N·m',
  angleUnit: 'deg',
  lines: [{ says: 'result', fields: [{ means: 'number' }, { means: 'torque' }, { means: 'angle' }] }],
  end: 'result',
  below: '2',
  samples: '10',
  seconds: '1',
  rate: '',
};

export function formOfLines(description: LineDescription): LineForm {
  const { endOfPull, samplesPerSecond, ...rest } = description;
  return {
    ...BLANK_LINES,
    ...rest,
    end: endOfPull.by,
    ...(endOfPull.by === 'fall' ? { below: String(endOfPull.below), samples: String(endOfPull.samples) } : {}),
    ...(endOfPull.by === 'silence' ? { seconds: String(endOfPull.seconds) } : {}),
    ...(samplesPerSecond === undefined ? {} : { rate: String(samplesPerSecond) }),
  };
}

/** The part of a description that something is wrong with. */
export const LINE_PARTS = ['name', 'delimiter', 'lines', 'endOfPull', 'samplesPerSecond'] as const;
export type LinePart = (typeof LINE_PARTS)[number];

export type LineReading =
  | { readonly description: LineDescription; readonly wrong: undefined }
  | { readonly description: undefined; readonly wrong: LinePart };

/** The description that stands in the form, or the first part of it that is wrong. */
export function readLineForm(form: LineForm, language: Language): LineReading {
  const { name, delimiter, decimalSign, torqueUnit, angleUnit, lines, rate } = form;
  const read = lineDescriptionSchema.safeParse({
    name,
    delimiter,
    decimalSign,
    torqueUnit,
    angleUnit,
    lines,
    endOfPull: endOf(form, language),
    ...(rate.trim() === '' ? {} : { samplesPerSecond: figure(rate, language) }),
  });
  if (read.success) return { description: read.data, wrong: undefined };
  const [part] = read.error.issues.flatMap(({ path }) => LINE_PARTS.find((known) => known === path[0]) ?? []);
  return { description: undefined, wrong: part ?? 'lines' };
}

function endOf({ end, below, samples, seconds }: LineForm, language: Language) {
  switch (end) {
    case 'result':
      return { by: end };
    case 'fall':
      return { by: end, below: figure(below, language), samples: figure(samples, language) };
    case 'silence':
      return { by: end, seconds: figure(seconds, language) };
  }
}

function figure(text: string, language: Language): number | undefined {
  const read = readNumber(text, language);
  return read.ok ? read.value : undefined;
}
