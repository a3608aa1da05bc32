import { checkOf } from './check.ts';

/** One sample of a pull that goes on: torque in N·m and angle in degrees as the wrench shows them. */
export interface SampleLine {
  readonly kind: 'sample';
  readonly pull: number;
  readonly timeS: number;
  readonly torqueNm: number;
  readonly angleDeg: number;
}

/** Closes a pull: its reading, how many sample lines went before, and who says so. */
export interface ResultLine {
  readonly kind: 'result';
  readonly pull: number;
  readonly torqueNm: number;
  /** The figures as the line carries them. */
  readonly torqueText: string;
  readonly angleText: string | undefined;
  readonly angleDeg: number | undefined;
  readonly fastestDegPerS: number | undefined;
  readonly samples: number;
  /** The wrench's own clock, UTC. */
  readonly takenAt: string;
  /** Identity that the wrench gave the pull: sent twice, it is the same pull. */
  readonly id: string;
  readonly serial: string;
}

export type Line = SampleLine | ResultLine;
/** `wrong` says in words what is the matter with a line. */
export type LineRead = Line | { readonly kind: 'wrong'; readonly wrong: string };

const COUNT = /^(0|[1-9]\d{0,8})$/;
const FIGURE = /^-?\d{1,7}(\.\d{1,6})?$/;
const INSTANT = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/;
const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[1-8][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;
const SERIAL = /^[\x21-\x7e]{1,100}$/;

/** Reads one whole line without its end. See README.md of this folder for the form. */
export function readLine(text: string): LineRead {
  const cut = text.lastIndexOf(' ');
  if (cut < 0 || text.slice(cut + 1) !== checkOf(text.slice(0, cut))) return wrong('its check does not match');
  const [kind, ...fields] = text.slice(0, cut).split(' ');
  if (kind === 's') return readSample(fields);
  if (kind === 'r') return readResult(fields);
  return wrong('it begins with neither s nor r');
}

const wrong = (what: string): LineRead => ({ kind: 'wrong', wrong: what });

function readSample(fields: readonly string[]): LineRead {
  const [pull = '', timeS = '', torqueNm = '', angleDeg = ''] = fields;
  if (fields.length !== 4) return wrong('a sample has four fields');
  if (!COUNT.test(pull) || ![timeS, torqueNm, angleDeg].every((text) => FIGURE.test(text))) {
    return wrong('a field of the sample is not a number');
  }
  return {
    kind: 'sample',
    pull: Number(pull),
    timeS: Number(timeS),
    torqueNm: Number(torqueNm),
    angleDeg: Number(angleDeg),
  };
}

function readResult(fields: readonly string[]): LineRead {
  const [pull = '', torque = '', angle = '', fastest = '', samples = '', takenAt = '', id = '', serial = ''] = fields;
  if (fields.length !== 8) return wrong('a result has eight fields');
  if (!COUNT.test(pull) || !COUNT.test(samples) || !FIGURE.test(torque))
    return wrong('a field of the result is not a number');
  if (![angle, fastest].every((text) => text === '-' || FIGURE.test(text)))
    return wrong('angle and speed are numbers or -');
  if (!INSTANT.test(takenAt) || Number.isNaN(Date.parse(takenAt)))
    return wrong('the time is not such as 2026-05-04T09:12:33.120Z');
  if (!UUID.test(id)) return wrong('the identity is not a UUID in small letters');
  if (!SERIAL.test(serial)) return wrong('the serial number is missing');
  return {
    kind: 'result',
    pull: Number(pull),
    torqueNm: Number(torque),
    torqueText: torque,
    angleText: angle === '-' ? undefined : angle,
    angleDeg: angle === '-' ? undefined : Number(angle),
    fastestDegPerS: fastest === '-' ? undefined : Number(fastest),
    samples: Number(samples),
    takenAt,
    id,
    serial,
  };
}
