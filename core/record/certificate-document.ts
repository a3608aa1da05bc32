import type { Warning } from '../joint/warning.ts';
import { sayCare } from '../language/care/say.ts';
import { sayDate } from '../language/dates.ts';
import { sayRemark } from '../language/mechanics/say-remark.ts';
import { say } from '../language/say.ts';
import type { Language } from '../quantity/language.ts';
import { showNumber } from '../quantity/show-number.ts';
import { showTorque } from '../quantity/show-quantity.ts';
import type { TorqueUnit } from '../quantity/unit.ts';
import { BUDGET_SOURCES } from '../wrench/budget.ts';
import type { Calibration } from '../wrench/calibration.ts';
import type { EvaluatedCalibration } from '../wrench/evaluate-calibration.ts';
import type { Direction, Wrench } from '../wrench/wrench.ts';
import { runBlocks } from './certificate-run.ts';
import type { Block, Document, Fact, Paper } from './document.ts';

/** What one run says in one direction. */
export interface CertifiedRun {
  readonly direction: Direction;
  readonly evaluated: EvaluatedCalibration;
}

/** A calibration with what was worked out from its readings. */
export interface Certified {
  readonly calibration: Calibration;
  readonly wrench: Wrench;
  readonly found: readonly CertifiedRun[];
  /** Undefined: not adjusted. */
  readonly left: readonly CertifiedRun[] | undefined;
}

/** How a certificate is written. */
export interface CertificateHand {
  readonly language: Language;
  readonly unit: TorqueUnit;
  readonly paper?: Paper;
}

/**
 * A calibration as a certificate to be read: what was compared with what, as found and as left, every single deviation, the
 * budget line by line, whether it conforms.
 *
 * @source what a certificate holds: ISO/IEC 17025:2017, 7.8.2 and 7.8.4; ISO 6789-2:2017, clause 8 (from memory)
 */
export function certificateDocument(certified: Certified, hand: CertificateHand): Document {
  const { calibration, wrench, found, left } = certified;
  const { language, paper = 'A4' } = hand;
  const subject = sayCare(language, 'certificate.subject', { wrench: wrench.name, serial: wrench.serial });
  return {
    title: sayCare(language, 'certificate.title'),
    subject,
    language,
    paper,
    datedAt: (calibration.asLeft ?? calibration.asFound).at,
    banner: undefined,
    reference: `Clampwright · ${calibration.certificate} · ${calibration.id}`,
    blocks: [
      { kind: 'facts', size: 'big', facts: resultFacts(certified, language) },
      { kind: 'facts', size: 'normal', facts: [...wrenchFacts(wrench, hand), ...workFacts(calibration, language)] },
      ...markBlocks(certified, language),
      ...runBlocks(found, sayCare(language, 'certificate.found'), hand),
      ...(left ? runBlocks(left, sayCare(language, 'certificate.left'), hand) : []),
      { kind: 'paragraph', text: sayCare(language, 'certificate.method') },
      {
        kind: 'note',
        tone: 'caution',
        title: sayCare(language, 'certificate.workshop-title'),
        lines: [sayCare(language, 'certificate.workshop'), say(language, 'caution.maker-first')],
      },
    ],
  };
}

function resultFacts({ calibration, found, left }: Certified, language: Language): readonly Fact[] {
  const standing = left ?? found;
  const conforms = standing.every(({ evaluated }) => evaluated.conforms);
  const limit = standing[0]?.evaluated.permissibleDeviationPercent;
  return [
    {
      label: sayCare(language, 'certificate.result'),
      value: sayCare(language, conforms ? 'certificate.conforms' : 'certificate.not-conforms'),
    },
    ...(limit === undefined
      ? []
      : [
          {
            label: sayCare(language, 'certificate.permissible'),
            value: `±\u00a0${showNumber(limit, language)}\u00a0%`,
          },
        ]),
    { label: sayCare(language, 'certificate.due'), value: sayDate(calibration.dueOn, language) },
  ];
}

function wrenchFacts(wrench: Wrench, { language, unit }: CertificateHand): readonly Fact[] {
  const torque = (torqueNm: number) => showTorque(torqueNm, unit, language);
  return [
    {
      label: say(language, 'record.wrench-type'),
      value: `${say(language, `wrench-type.${wrench.type}`)}, ${wrench.class}`,
    },
    {
      label: say(language, 'record.range'),
      value: say(language, 'record.from-to', { from: torque(wrench.lowestNm), to: torque(wrench.highestNm) }),
    },
    { label: say(language, 'record.resolution'), value: torque(wrench.resolutionNm) },
    { label: say(language, 'record.lever'), value: `${showNumber(wrench.leverMm, language)}\u00a0mm` },
  ];
}

function workFacts(calibration: Calibration, language: Language): readonly Fact[] {
  const { certificate, by, calibratedOn, place, temperatureC, humidityPercent, reference, note } = calibration;
  const label = (key: 'number' | 'by' | 'on' | 'place' | 'temperature' | 'humidity' | 'reference' | 'note') =>
    sayCare(language, `certificate.${key}`);
  return [
    { label: label('number'), value: certificate },
    { label: label('by'), value: by },
    { label: label('on'), value: sayDate(calibratedOn, language) },
    ...(place ? [{ label: label('place'), value: place }] : []),
    ...(temperatureC === undefined
      ? []
      : [{ label: label('temperature'), value: `${showNumber(temperatureC, language)}\u00a0°C` }]),
    ...(humidityPercent === undefined
      ? []
      : [{ label: label('humidity'), value: `${showNumber(humidityPercent, language)}\u00a0%` }]),
    {
      label: label('reference'),
      value: sayCare(language, 'certificate.reference-text', {
        name: reference.name,
        serial: reference.serial,
        uncertainty: showNumber(reference.expandedUncertaintyPercent, language),
        certificate: reference.certificate,
        by: reference.by,
        due: sayDate(reference.dueOn, language),
      }),
    },
    ...(note ? [{ label: label('note'), value: note }] : []),
  ];
}

/** A contribution by its name; what is said of readings speaks for itself. */
function sayMark(warning: Warning, language: Language): string {
  const field = warning.field === 'referenceUncertaintyPercent' ? 'reference' : warning.field;
  const source = BUDGET_SOURCES.find((known) => known === field);
  const said = sayRemark(warning, language);
  return source ? `${sayCare(language, `budget.${source}`)}: ${said}` : said;
}

/** What was assumed or done short of the standard, so that no reader takes it for measured. */
function markBlocks({ found, left }: Certified, language: Language): readonly Block[] {
  const warnings = [...found, ...(left ?? [])].flatMap(({ evaluated }) => evaluated.warnings);
  const lines = [...new Set(warnings.map((warning) => sayMark(warning, language)))];
  if (lines.length === 0) return [];
  return [{ kind: 'note', tone: 'notice', title: sayCare(language, 'certificate.marks'), lines }];
}
