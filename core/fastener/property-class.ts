import { invalid, ok, type Result } from '../failure/failure.ts';
import { convert } from '../quantity/convert.ts';
import {
  BOLTING_GRADES,
  INCH_GRADES,
  type InchGradeRow,
  METRIC_CLASSES,
  METRIC_STUD_GRADES,
  type MetricClassRow,
  STAINLESS_CLASSES,
} from './property-classes.ts';
import { inchesToMm, type Thread } from './thread.ts';

/** Strength of a property class over a range of sizes: above < d ≤ up to. */
export interface PropertyClass {
  /** `8.8`, `A4-80`; for inch threads `SAE J429 grade 5`, `ASTM A193 B7`. */
  readonly name: string;
  readonly standard: MetricClassRow['standard'] | InchGradeRow['standard'];
  readonly system: Thread['system'];
  readonly aboveMm: number;
  readonly upToMm: number;
  /** Stress under proof load, where the standard sets one. */
  readonly proofStressMPa?: number;
  readonly yieldStrengthMPa: number;
  readonly tensileStrengthMPa: number;
}

const ofMetric = ({ name, standard, aboveMm = 0, upToMm = Infinity, ...stress }: MetricClassRow): PropertyClass => ({
  name,
  standard,
  system: 'ISO metric',
  aboveMm,
  upToMm,
  ...(stress.proofMPa === undefined ? {} : { proofStressMPa: stress.proofMPa }),
  yieldStrengthMPa: stress.yieldMPa,
  tensileStrengthMPa: stress.tensileMPa,
});

const ofInch = ({ name, standard, aboveIn = 0, upToIn, ...stress }: InchGradeRow): PropertyClass => ({
  name,
  standard,
  system: 'Unified',
  aboveMm: inchesToMm(aboveIn),
  upToMm: inchesToMm(upToIn),
  ...(stress.proofKsi === undefined ? {} : { proofStressMPa: megapascals(stress.proofKsi) }),
  yieldStrengthMPa: megapascals(stress.yieldKsi),
  tensileStrengthMPa: megapascals(stress.tensileKsi),
});

function megapascals(ksi: number): number {
  const stress = convert(ksi, 'ksi', 'MPa');
  if (!stress.ok) throw new Error(`${ksi} ksi cannot be converted`);
  return stress.value;
}

/** Every class known; one with a size step stands once for each range, one for both systems once for each. */
export const PROPERTY_CLASSES: readonly PropertyClass[] = [
  ...[...METRIC_CLASSES, ...STAINLESS_CLASSES, ...METRIC_STUD_GRADES].map(ofMetric),
  ...[...INCH_GRADES, ...BOLTING_GRADES].map(ofInch),
];

/**
 * Strength of a class at the size of a thread.
 *
 * @param text   `8.8`, `10.9`, `A4-80`; `grade 5`, `SAE J429 grade 5` or `5` for inch threads; `B7`, `ASTM A193 B7`
 * @param thread whose system and size the class must have
 * @param field  named in the refusal, which tells the classes that the thread does have
 */
export function readPropertyClass(text: string, thread: Thread, field = 'propertyClass'): Result<PropertyClass> {
  const typed = text.trim();
  const named = BY_KEY.get(keyOf(typed)) ?? [];
  const found = named.find((row) => belongs(row, thread));
  if (found !== undefined) return ok(found);
  const having = [...new Set(PROPERTY_CLASSES.filter((row) => belongs(row, thread)).map((row) => row.name))];
  const expected =
    having.length > 0
      ? `one of ${having.join(', ')}`
      : `no class: ${thread.designation} is larger than the standard goes`;
  return invalid(field, refusal(typed, named, thread), expected);
}

/** Whether a text names a class of the shipped tables, for whatever thread. */
export const isKnownClass = (text: string): boolean => BY_KEY.has(keyOf(text.trim()));

/** The class of the greatest tensile strength at a size; an own bolt may be thicker than any class goes. */
export function strongestClass(system: Thread['system'], majorDiameterMm: number): PropertyClass {
  const ofSystem = PROPERTY_CLASSES.filter((row) => row.system === system).toSorted(
    (a, b) => b.tensileStrengthMPa - a.tensileStrengthMPa,
  );
  const strongest =
    ofSystem.find((row) => majorDiameterMm > row.aboveMm && majorDiameterMm <= row.upToMm) ?? ofSystem[0];
  if (!strongest) throw new Error(`no property class of ${system} threads`);
  return strongest;
}

const belongs = ({ system, aboveMm, upToMm }: PropertyClass, thread: Thread): boolean =>
  system === thread.system && thread.majorDiameterMm > aboveMm && thread.majorDiameterMm <= upToMm;

/** Words that stand before a class without being part of it. */
const BEFORE =
  /^(?:ISO 898-1|ISO 3506-1|SAE|J ?429|ASTM|F3125|A193|A320|PROPERTY CLASS|CLASS|GRADE|GR\.?)(?=[ \d-]|$)[ -]*/;

/** What is left of a class's name when only what tells it from others is kept: `8.8`, `A4-80`, `5`, `B7`. */
function keyOf(text: string): string {
  const key = text.toUpperCase().replace(',', '.').replace(/\s+/g, ' ');
  const after = key.replace(BEFORE, '');
  return after === key || after === '' ? key.replaceAll(' ', '-') : keyOf(after);
}

const BY_KEY = new Map<string, PropertyClass[]>();
for (const row of PROPERTY_CLASSES) {
  const key = keyOf(row.name);
  BY_KEY.set(key, [...(BY_KEY.get(key) ?? []), row]);
}

function refusal(typed: string, named: readonly PropertyClass[], thread: Thread): string {
  const [first] = named;
  if (typed === '') return 'There is no property class.';
  if (first === undefined) return `“${typed}” is no property class known here.`;
  if (!named.some(({ system }) => system === thread.system))
    return `${first.name} belongs to ${first.system} threads; ${thread.designation} is ${thread.system}.`;
  return `${first.name} does not exist for ${thread.designation} (${first.standard}).`;
}
