import { invalid, ok, type Result } from '../failure/failure.ts';
import { convert } from '../quantity/convert.ts';
import { INCH_GRADES, type InchGradeRow, METRIC_CLASSES, type MetricClassRow } from './property-classes.ts';
import { inchesToMm, type Thread } from './thread.ts';

/** Strength of a property class over a range of sizes: above < d ≤ up to. */
export interface PropertyClass {
  /** `8.8`; for inch threads `SAE J429 grade 5`. */
  readonly name: string;
  readonly standard: 'ISO 898-1' | 'SAE J429';
  readonly system: Thread['system'];
  readonly aboveMm: number;
  readonly upToMm: number;
  readonly proofStressMPa: number;
  readonly yieldStrengthMPa: number;
  readonly tensileStrengthMPa: number;
}

const ofMetric = ({
  name,
  aboveMm = 0,
  upToMm = Infinity,
  proofMPa,
  yieldMPa,
  tensileMPa,
}: MetricClassRow): PropertyClass => ({
  name,
  standard: 'ISO 898-1',
  system: 'ISO metric',
  aboveMm,
  upToMm,
  proofStressMPa: proofMPa,
  yieldStrengthMPa: yieldMPa,
  tensileStrengthMPa: tensileMPa,
});

const ofInch = ({ name, aboveIn = 0, upToIn, proofKsi, yieldKsi, tensileKsi }: InchGradeRow): PropertyClass => ({
  name,
  standard: 'SAE J429',
  system: 'Unified',
  aboveMm: inchesToMm(aboveIn),
  upToMm: inchesToMm(upToIn),
  proofStressMPa: megapascals(proofKsi),
  yieldStrengthMPa: megapascals(yieldKsi),
  tensileStrengthMPa: megapascals(tensileKsi),
});

function megapascals(ksi: number): number {
  const stress = convert(ksi, 'ksi', 'MPa');
  if (!stress.ok) throw new Error(`${ksi} ksi cannot be converted`);
  return stress.value;
}

/** Every class known; one with a size step stands once for each range. */
export const PROPERTY_CLASSES: readonly PropertyClass[] = [...METRIC_CLASSES.map(ofMetric), ...INCH_GRADES.map(ofInch)];

/**
 * Strength of a class at the size of a thread.
 *
 * @param text   `8.8`, `10.9`; `grade 5`, `SAE J429 grade 5` or `5` for inch threads
 * @param thread whose system and size the class must have
 * @param field  named in the refusal, which tells the classes that the thread does have
 */
export function readPropertyClass(text: string, thread: Thread, field = 'propertyClass'): Result<PropertyClass> {
  const typed = text.trim();
  const name = className(typed);
  const named = PROPERTY_CLASSES.filter((row) => row.name === name);
  const found = named.find((row) => belongs(row, thread));
  if (found !== undefined) return ok(found);
  const having = [...new Set(PROPERTY_CLASSES.filter((row) => belongs(row, thread)).map((row) => row.name))];
  const expected =
    having.length > 0
      ? `one of ${having.join(', ')}`
      : `no class: ${thread.designation} is larger than the standard goes`;
  return invalid(field, refusal(typed, named[0], thread), expected);
}

const belongs = ({ system, aboveMm, upToMm }: PropertyClass, thread: Thread): boolean =>
  system === thread.system && thread.majorDiameterMm > aboveMm && thread.majorDiameterMm <= upToMm;

/** The name in the tables for what was typed, or the text itself. */
function className(typed: string): string {
  const metric = /^(?:(?:property )?class |iso 898-1 )?(\d{1,2}[.,]\d)$/i.exec(typed)?.[1];
  if (metric !== undefined) return metric.replace(',', '.');
  const grade = /^(?:sae[ -]?)?(?:j ?429[ -]?)?(?:grade|gr\.?)? ?([258])$/i.exec(typed)?.[1];
  return grade === undefined ? typed : `SAE J429 grade ${grade}`;
}

function refusal(typed: string, named: PropertyClass | undefined, thread: Thread): string {
  if (typed === '') return 'There is no property class.';
  if (named === undefined) return `“${typed}” is no property class known here.`;
  if (named.system !== thread.system)
    return `${named.name} belongs to ${named.system} threads; ${thread.designation} is ${thread.system}.`;
  return `${named.name} does not exist for ${thread.designation} (${named.standard}).`;
}
