import { invalid, ok, type Result } from '../failure/failure.ts';
import { ByteReader, ByteWriter } from './bytes.ts';

/** Samples of one pull as they are kept. */
export interface KeptSamples {
  readonly timeS: number[];
  readonly angleDeg: number[];
  readonly torqueNm: number[];
}

const VERSION = 1;
/** Decimals beyond this, and whole numbers beyond 2^50, are kept as they lie in memory. */
const MOST_DECIMALS = 9;
const LARGEST = 2 ** 50;
const AS_IT_IS = 255;

/**
 * Writes samples as differences of whole numbers of the device's own steps: nothing is lost, every figure comes back
 * to its last digit.
 *
 * One byte of version, the number of samples, then time, angle and torque. Each series: its decimals (or 255: eight
 * bytes a figure), how often differences were taken (1 or 2), and the differences, small ones in one byte.
 */
export function encodeSamples({ timeS, angleDeg, torqueNm }: KeptSamples): Uint8Array {
  const bytes = new ByteWriter();
  bytes.byte(VERSION);
  bytes.whole(timeS.length);
  for (const series of [timeS, angleDeg, torqueNm]) writeSeries(bytes, series);
  return bytes.done();
}

/** Reads what {@link encodeSamples} wrote; refused where the bytes are none of that, or of a later version. */
export function decodeSamples(bytes: Uint8Array): Result<KeptSamples> {
  const reader = new ByteReader(bytes);
  const version = reader.byte();
  if (version !== VERSION) return refused(`They are of form ${version}.`);
  const count = reader.whole();
  // a figure takes a byte at least
  if (3 * count > bytes.length) return refused('They end too early.');
  const timeS = readSeries(reader, count);
  const angleDeg = readSeries(reader, count);
  const torqueNm = readSeries(reader, count);
  return reader.isAtEnd ? ok({ timeS, angleDeg, torqueNm }) : refused('They end too early or too late.');
}

const refused = (message: string): ReturnType<typeof invalid> =>
  invalid('samples', message, `samples in form ${VERSION}`);

function writeSeries(bytes: ByteWriter, series: readonly number[]): void {
  const decimals = decimalsOf(series);
  if (decimals === undefined) {
    bytes.byte(AS_IT_IS);
    for (const figure of series) bytes.figure(figure);
    return;
  }
  const scale = 10 ** decimals;
  const steps = series.map((figure) => Math.round(figure * scale));
  const once = differences(steps);
  const twice = differences(once);
  const order = sizeOf(twice) < sizeOf(once) ? 2 : 1;
  bytes.byte(decimals);
  bytes.byte(order);
  for (const step of order === 2 ? twice : once) bytes.signed(step);
}

function readSeries(reader: ByteReader, count: number): number[] {
  const decimals = reader.byte();
  if (decimals === AS_IT_IS) return Array.from({ length: count }, () => reader.figure());
  const order = reader.byte();
  const scale = 10 ** decimals;
  let step = 0;
  let figure = 0;
  return Array.from({ length: count }, () => {
    step = order === 2 ? step + reader.signed() : reader.signed();
    figure += step;
    return figure / scale;
  });
}

/** Fewest decimals with which every figure comes back to its last digit. */
function decimalsOf(series: readonly number[]): number | undefined {
  for (let decimals = 0; decimals <= MOST_DECIMALS; decimals++) {
    const scale = 10 ** decimals;
    const fits = (figure: number): boolean => {
      const steps = Math.round(figure * scale);
      return Math.abs(steps) <= LARGEST && steps / scale === figure;
    };
    if (series.every(fits)) return decimals;
  }
  return undefined;
}

const differences = (values: readonly number[]): number[] =>
  values.map((value, i) => value - (i === 0 ? 0 : values[i - 1]!));

/** Bytes that differences take, near enough. */
const sizeOf = (steps: readonly number[]): number =>
  steps.reduce((sum, step) => sum + 1 + Math.floor(Math.log2(2 * Math.abs(step) + 1) / 7), 0);
