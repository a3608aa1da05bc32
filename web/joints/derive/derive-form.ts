import type { Failure } from '@clampwright/core/failure';
import type { OwnBolt, OwnMaterial, OwnRow } from '@clampwright/core/fastener';
import { type DerivedTarget, deriveTarget } from '@clampwright/core/joint';
import { type Language, showNumber, type TorqueUnit } from '@clampwright/core/quantity';
import type { Wrench } from '@clampwright/core/wrench';
import type { Fault } from '../../forms/fault.ts';
import { type Reader, readerIn } from '../../forms/reader.ts';
import { whole } from '../../forms/whole.ts';
import type { JointForm } from '../form/joint-form.ts';
import { boltChoices, materialChoices } from '../own-rows/own-choices.ts';
import { type FrictionChoice, frictionChoices, rangesOf } from './friction-choice.ts';
import { METHODS, type Method, USUAL_METHOD } from './methods.ts';

/** What a lead tells to have a target worked out; every figure is the text in its field. */
export interface DeriveForm {
  readonly thread: string;
  /** `designation`, or the identity of an own bolt. */
  readonly bolt: string;
  /** `class`, or the identity of an own material. */
  readonly strength: string;
  readonly propertyClass: string;
  /** Value of a `FrictionChoice`. */
  readonly friction: string;
  /** Used where friction is typed. */
  readonly threadFriction: string;
  readonly bearingFriction: string;
  readonly frictionSource: string;
  readonly utilizationPercent: string;
  readonly method: string;
  readonly tighteningFactor: string;
  /** `typed`, or the identity of a wrench whose own scatter is the window. */
  readonly windowBy: string;
  readonly plusMinusPercent: string;
}

/** What can be chosen from. */
export interface DeriveChoices {
  readonly frictions: readonly FrictionChoice[];
  readonly bolts: readonly OwnBolt[];
  readonly materials: readonly OwnMaterial[];
  /** Calibrated ones: of the others nobody knows the scatter. */
  readonly wrenches: readonly Wrench[];
}

export const deriveChoices = (
  ownRows: readonly OwnRow[],
  wrenches: readonly Wrench[],
  { ownBolt, ownMaterial }: JointForm['fastener'],
): DeriveChoices => ({
  frictions: frictionChoices(ownRows),
  bolts: boltChoices(ownRows, ownBolt),
  materials: materialChoices(ownRows, ownMaterial),
  wrenches: wrenches.filter(({ calibration }) => calibration !== undefined),
});

/** Utilisation that assembly tables are printed for (VDI 2230-1:2015, table A1). */
const USUAL_UTILIZATION_PERCENT = '90';

export const blankDerive = ({ fastener }: JointForm, language: Language): DeriveForm => ({
  thread: fastener.thread,
  bolt: fastener.ownBolt?.id ?? 'designation',
  strength: fastener.ownMaterial?.id ?? 'class',
  propertyClass: fastener.propertyClass,
  friction: 'typed',
  threadFriction: '',
  bearingFriction: '',
  frictionSource: '',
  utilizationPercent: USUAL_UTILIZATION_PERCENT,
  method: USUAL_METHOD?.value ?? '',
  tighteningFactor: USUAL_METHOD ? greatestFactor(USUAL_METHOD, language) : '',
  windowBy: 'typed',
  plusMinusPercent: '',
});

/** The greatest guide value: the least preload is then not told too high. */
export const greatestFactor = ({ row }: Method, language: Language): string => showNumber(row.highest, language);

/** What a wrench itself may be off: the largest deviation found, and the uncertainty of finding it, percent. */
export const ownScatterPercent = ({ calibration }: Wrench): number =>
  calibration ? calibration.maximumDeviationPercent + calibration.expandedUncertaintyPercent : 0;

export const chosenFriction = (form: DeriveForm, { frictions }: DeriveChoices): FrictionChoice =>
  frictions.find(({ value }) => value === form.friction) ?? { kind: 'typed', value: 'typed' };

export const chosenMethod = (form: DeriveForm): Method | undefined =>
  METHODS.find(({ value }) => value === form.method);

/** How the sources of what was chosen are said; in the language on screen, as a lead would write them. */
export interface Citing {
  readonly friction: (choice: FrictionChoice, typedSource: string) => string;
  readonly method: (method: Method) => string;
}

/** What the form says, once everything can be read. */
export interface DeriveReading {
  readonly derived: DerivedTarget | undefined;
  readonly plusMinusPercent: number | undefined;
  readonly faults: readonly Fault[];
}

export function readDerive(
  form: DeriveForm,
  choices: DeriveChoices,
  torqueUnit: TorqueUnit,
  language: Language,
  citing: Citing,
): DeriveReading {
  const reader = readerIn(language);
  const plusMinusPercent = readPlusMinus(form, choices, reader);
  const ownBolt = choices.bolts.find(({ id }) => id === form.bolt);
  const ownMaterial = choices.materials.find(({ id }) => id === form.strength);
  const figures = whole({
    thread: ownBolt?.name ?? reader.text('thread', form.thread),
    className: ownMaterial ? '' : reader.text('propertyClass', form.propertyClass),
    friction: readFriction(form, choices, reader, citing),
    utilizationPercent: reader.number('utilization', form.utilizationPercent, { isPositive: true, to: 100 }),
    tighteningFactor: reader.number('tighteningFactor', form.tighteningFactor, { from: 1, to: 10 }),
    plusMinusPercent,
  });
  if (!figures) return { derived: undefined, plusMinusPercent, faults: reader.faults };
  const { className, friction, utilizationPercent, ...rest } = figures;
  const method = chosenMethod(form);
  const derived = deriveTarget({
    ...rest,
    ownBolt,
    propertyClass: ownMaterial ? undefined : className,
    ownMaterial,
    ...friction,
    utilization: utilizationPercent / 100,
    torqueUnit,
    sources: [friction.source, ...(method ? [citing.method(method)] : [])],
  });
  if (derived.ok) return { derived: derived.value, plusMinusPercent, faults: reader.faults };
  const [field, finding] = refused(derived.failure);
  reader.fault(field, finding);
  return { derived: undefined, plusMinusPercent, faults: reader.faults };
}

/** What cannot be derived, at the field where it is mended. */
function refused(failure: Failure): readonly [string, Fault['finding']] {
  const field = failure.kind === 'invalid' ? failure.field : '';
  switch (field) {
    case 'propertyClass':
      return [field, { kind: 'mend', word: 'class' }];
    case 'bearingOuterMm':
    case 'holeMm':
      return ['thread', { kind: 'mend', word: 'no-face' }];
    case 'thread':
      return [field, { kind: 'mend', word: 'thread' }];
    default:
      return [field, failure];
  }
}

function readFriction(form: DeriveForm, choices: DeriveChoices, reader: Reader, citing: Citing) {
  const choice = chosenFriction(form, choices);
  const ranges = rangesOf(choice);
  if (ranges) {
    return {
      threadFriction: ranges.thread.lower,
      bearingFriction: ranges.bearing.lower,
      ownLubricant: choice.kind === 'own' ? choice.row : undefined,
      source: citing.friction(choice, ''),
    };
  }
  const typed = whole({
    threadFriction: reader.number('threadFriction', form.threadFriction, { isPositive: true, to: 1 }),
    bearingFriction: reader.number('bearingFriction', form.bearingFriction, { isPositive: true, to: 1 }),
    source: reader.text('frictionSource', form.frictionSource),
  });
  return typed && { ...typed, ownLubricant: undefined, source: citing.friction(choice, typed.source) };
}

function readPlusMinus(form: DeriveForm, { wrenches }: DeriveChoices, reader: Reader): number | undefined {
  const wrench = wrenches.find(({ id }) => id === form.windowBy);
  // A hundredth of a percent is finer than any certificate tells.
  if (wrench) return Math.ceil(ownScatterPercent(wrench) * 100 - 1e-9) / 100;
  return reader.number('plusMinusPercent', form.plusMinusPercent, { isPositive: true, to: 50 });
}
