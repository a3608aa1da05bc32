import type { OwnBolt, OwnMaterial } from '@clampwright/core/fastener';
import type {
  ConsequenceClass,
  DecisionRule,
  Derivation,
  FastenerSpec,
  JointContent,
  Rework,
} from '@clampwright/core/joint';
import type { Layout, Order } from '@clampwright/core/layout';
import type { StageKind, TypedWindow } from '@clampwright/core/procedure';
import type { TorqueUnit } from '@clampwright/core/quantity';
import type { Keyed } from '../../forms/rows.ts';
import type { NeighboursForm } from '../plan/neighbours-form.ts';

/* A joint while it is being written: every figure is the text that stands in its field, nothing is converted yet. */

export type Method = Order['method'];
export type LengthUnit = 'mm' | 'in';

export interface WindowForm {
  readonly form: TypedWindow['form'];
  readonly target: string;
  readonly percent: string;
  readonly plusMinus: string;
  readonly lower: string;
  readonly upper: string;
  readonly unit: string;
}

export interface RoundForm extends Keyed {
  readonly sharePercent: string;
  readonly method: Method;
  /** Used with the method `own`. */
  readonly positions: readonly number[];
  /** Share of the torque by position, as a plan filled it in. */
  readonly positionShares: readonly number[] | undefined;
  /** Gone round again until nothing moves further than `stillDeg`. */
  readonly isClosing: boolean;
  readonly stillDeg: string;
}

export interface StageForm extends Keyed {
  readonly kind: StageKind;
  readonly torqueUsed: boolean;
  readonly torque: WindowForm;
  readonly angleUsed: boolean;
  readonly angle: WindowForm;
  readonly angleFrom: string;
  readonly angleFromUnit: TorqueUnit;
  readonly speedLimit: string;
  readonly rounds: readonly RoundForm[];
}

export interface PointForm extends Keyed {
  readonly x: string;
  readonly y: string;
}

export interface LayoutForm {
  readonly kind: Layout['kind'];
  readonly unit: LengthUnit;
  readonly count: string;
  readonly diameter: string;
  readonly firstAngle: string;
  readonly direction: 'clockwise' | 'counter-clockwise';
  readonly rows: string;
  readonly columns: string;
  readonly pitchX: string;
  readonly pitchY: string;
  readonly edgeOnly: boolean;
  readonly staggered: boolean;
  /** Places without a fastener, as typed. */
  readonly missing: string;
  readonly pitch: string;
  readonly points: readonly PointForm[];
}

export interface CautionForm extends Keyed {
  readonly text: string;
}

/** Torque that a sound fastener takes before it clamps. */
export interface PrevailingForm {
  readonly by: NonNullable<FastenerSpec['prevailing']>['by'] | 'none';
  readonly highest: string;
  readonly unit: TorqueUnit;
}

export interface JointForm {
  readonly name: string;
  readonly fastener: {
    readonly thread: string;
    readonly propertyClass: string;
    /** The own row that was chosen, as it stood; `thread` is then its designation. */
    readonly ownBolt: OwnBolt | undefined;
    /** The same in place of a property class. */
    readonly ownMaterial: OwnMaterial | undefined;
    readonly description: string;
    readonly lubricant: string;
    readonly reuse: FastenerSpec['reuse'];
    readonly prevailing: PrevailingForm;
    /** N/mm; empty: not known. */
    readonly stiffness: string;
  };
  readonly layout: LayoutForm;
  readonly stages: readonly StageForm[];
  readonly numbersSource: {
    readonly kind: JointContent['numbersSource']['kind'];
    readonly text: string;
    /** Kept with the kind `derived` alone. */
    readonly derivation: Derivation | undefined;
  };
  readonly cautions: readonly CautionForm[];
  readonly rework: {
    readonly rule: Rework['rule'];
    readonly underContinues: boolean;
    readonly maximumAttempts: string;
  };
  readonly decisionRule: {
    readonly kind: DecisionRule['kind'];
    readonly factor: string;
    readonly maximumPercent: string;
  };
  readonly neighbours: NeighboursForm;
  readonly consequenceClass: ConsequenceClass | 'none';
  readonly torqueUnit: TorqueUnit;
  readonly retorque: {
    readonly used: boolean;
    readonly after: string;
    readonly unit: 'km' | 'h' | 'd';
    readonly note: string;
  };
}
