import { invalid, ok, type Result } from '../failure/failure.ts';
import { boltFault, boltFaultInWords } from './bolt-fault.ts';
import type { OwnThread, ThreadTold } from './own-thread.ts';
import { inchesToMm, THREADS, type Thread } from './thread.ts';

/** Decimal sizes such as `.313` for 5/16 are rounded to a thousandth of an inch. */
const INCH_ROUNDING_MM = inchesToMm(0.0006);
/** Room for binary fractions alone. */
const EXACT = 1e-6;

const METRIC = /^M ?(?<size>\d+(?:[.,]\d+)?)(?: ?[Xx×*-] ?(?<pitch>\d+(?:[.,]\d+)?))?(?: ?- ?\d[A-Z](?:\d[A-Z])?)?$/;
const INCH_SIZE = String.raw`(?:(?:#|NO\.?) ?(?<gauge>\d+)|(?:(?<inches>\d+)[ -])?(?<over>\d+)/(?<under>\d+)|(?<plain>\d*\.?\d+))`;
const INCH = new RegExp(
  `^${INCH_SIZE} ?(?:"|″|IN\\.?)? ?(?:[-–×X] ?| )?(?<perInch>\\d+(?:\\.5)?)? ?-? ?(?<series>UNC|UNF|UN)?(?: ?- ?[123][AB])?$`,
);

/** What a designation asks for; `sizes` holds more than one when `4` may be #4 or 4 in. */
interface Wanted {
  readonly sizes: readonly number[];
  /** How far a typed size may lie from the thread's. */
  readonly slackMm: number;
  readonly system: Thread['system'];
  readonly fits: (thread: Thread) => boolean;
}

/**
 * Reads a thread.
 *
 * @param told  `M10`, `M10x1.25`, `3/8-16 UNC`, `#8-32`, `1 1/2-6 UNC`; case, spaces, `×` and a tolerance class at
 *              the end make no difference; the series may be left out where the pitch tells it, or the pitch where
 *              the series does; or the dimensions of a bolt of one's own
 * @param field named in the refusal, which tells the nearest known designations
 */
export function readThread(told: ThreadTold, field = 'thread'): Result<Thread> {
  return typeof told === 'string' ? readDesignation(told, field) : readOwn(told, field);
}

/** @returns refused with the figure that cannot be, such as `thread.pitchMm` */
function readOwn(own: OwnThread, field: string): Result<Thread> {
  const fault = boltFault(own);
  if (fault) {
    const { message, expected } = boltFaultInWords(own, fault);
    return invalid(`${field}.${fault.field}`, message, expected);
  }
  const asThick = THREADS.find(
    ({ system, majorDiameterMm }) => system === own.system && isNear(majorDiameterMm, own.majorDiameterMm),
  );
  const { designation, system, majorDiameterMm, pitchMm } = own;
  const size = asThick?.size ?? designation;
  return ok({ designation, system, series: 'own', size, majorDiameterMm, pitchMm, own });
}

function readDesignation(text: string, field: string): Result<Thread> {
  const typed = tidy(text);
  const wanted = metricWanted(typed) ?? inchWanted(typed);
  if (wanted === undefined) {
    const message = typed === '' ? 'There is no thread.' : `“${text.trim()}” is no designation of a thread.`;
    return invalid(field, message, 'a designation such as M10, M10x1.25, 3/8-16 UNC or #8-32 UNC');
  }
  const sized = THREADS.filter((thread) => hasSize(thread, wanted));
  const [found, ...others] = sized.filter(wanted.fits);
  if (found !== undefined && others.length === 0) return ok(found);
  const unknown = sized.length > 0 ? 'is none of the threads of its size' : 'is no thread known here';
  return invalid(field, `“${text.trim()}” ${found ? 'fits more than one thread' : unknown}.`, nearest(sized, wanted));
}

/** One spelling for the readers below: upper case, single spaces, `1½` as `1 1/2`. */
const tidy = (text: string): string =>
  text
    .replace(/(\d)(?=[¼½¾⅛⅜⅝⅞])/gu, '$1 ')
    .normalize('NFKC')
    .replaceAll('⁄', '/')
    .toUpperCase()
    .replace(/\s+/g, ' ')
    .trim();

const isNear = (a: number, b: number, slack = EXACT): boolean => Math.abs(a - b) < slack;

const hasSize = (thread: Thread, { system, sizes, slackMm }: Wanted): boolean =>
  thread.system === system && sizes.some((size) => isNear(size, thread.majorDiameterMm, slackMm));

const decimal = (text: string): number => Number(text.replace(',', '.'));

function metricWanted(typed: string): Wanted | undefined {
  const parts = METRIC.exec(typed)?.groups;
  if (parts?.size === undefined) return undefined;
  const { size, pitch } = parts;
  const fits = (thread: Thread) =>
    pitch === undefined ? thread.series === 'coarse' : isNear(thread.pitchMm, decimal(pitch));
  return { sizes: [decimal(size)], slackMm: EXACT, system: 'ISO metric', fits };
}

function inchWanted(typed: string): Wanted | undefined {
  const parts = INCH.exec(typed)?.groups;
  if (parts === undefined) return undefined;
  const { perInch, series } = parts;
  const fits = (thread: Thread) =>
    (perInch === undefined || isNear(inchesToMm(1) / thread.pitchMm, Number(perInch))) &&
    (series === undefined || thread.series === (series === 'UN' ? '8-UN' : series));
  return { sizes: inchSizes(parts).map(inchesToMm), slackMm: INCH_ROUNDING_MM, system: 'Unified', fits };
}

/** Gauge number n has a basic diameter of 0.060 in + n × 0.013 in (ASME B1.1-2003). */
const gaugeInches = (gauge: number): number => 0.06 + 0.013 * gauge;

function inchSizes(parts: Readonly<Record<string, string | undefined>>): readonly number[] {
  const { gauge, inches, over, under, plain, perInch } = parts;
  if (gauge !== undefined) return [gaugeInches(Number(gauge))];
  if (over !== undefined) return [Number(inches ?? 0) + Number(over) / Number(under)];
  const size = Number(plain);
  // `1 UNC` has always meant the inch; the smallest gauges are told from it by their threads alone.
  const mayBeGauge = Number.isInteger(size) && (size >= 4 || perInch !== undefined);
  return mayBeGauge ? [size, gaugeInches(size)] : [size];
}

/** Threads of the very size, or else the usual thread of the two sizes next to it. */
function nearest(sized: readonly Thread[], { sizes, system }: Wanted): string {
  const [size = 0] = sizes;
  const usual = THREADS.filter(
    (thread) => thread.system === system && (thread.series === 'coarse' || thread.series === 'UNC'),
  );
  const distance = (thread: Thread) => Math.abs(thread.majorDiameterMm - size);
  const next = usual.toSorted((a, b) => distance(a) - distance(b)).slice(0, 2);
  return (sized.length > 0 ? sized : next).map(({ designation }) => designation).join(' or ');
}
